import type { MuscleId } from '../anatomy/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import { type ChosenExercise, chooseExercises } from './chooseExercises.ts';
import type { LiftIntent, MusclesIntent, SessionIntent } from './Intent.ts';
import type { Refusal } from './LiftPlan.ts';
import { muscleName } from './muscleName.ts';
import type { PlanGym } from './PlanGym.ts';
import { type SettledLift, settleLift, type UnsettledLift } from './settleLift.ts';
import { stationsAt } from './stationsAt.ts';

/** Lifts that were chosen for muscles, and muscles for which there is none. */
export interface ChosenLifts {
  readonly lifts: readonly (SettledLift | UnsettledLift)[];
  readonly refused: readonly Refusal[];
}

/**
 * The lifts for the muscles that an intent names, after those that it names itself: what these
 * move with already is not chosen for again.
 *
 * @param named the lifts that the intent names, as they are done.
 */
export function chosenLifts(
  { muscles, lifts }: Pick<SessionIntent, 'muscles' | 'lifts'>,
  named: readonly (SettledLift | UnsettledLift)[],
  client: Client,
  gym: PlanGym,
  limits: Limits,
): ChosenLifts {
  if (!muscles) return { lifts: [], refused: [] };
  const trained = named.flatMap((one) =>
    one.kind === 'settled' ? Object.keys(one.lift.exercise.direct) : [],
  );
  const wanted = [...new Set(muscles.muscles)].filter((id) => !trained.includes(id));
  const stations = stationsAt(gym, [...client.sets, ...lifts]);
  const { chosen, without } = chooseExercises(wanted, { client, gym, limits, stations });
  return {
    lifts: chosen.map((one) => settled(one, muscles, client, gym, limits)),
    refused: without.map(nothingFor),
  };
}

function settled(
  { muscles, reasons, ...place }: ChosenExercise,
  intent: MusclesIntent,
  client: Client,
  gym: PlanGym,
  limits: Limits,
): SettledLift | UnsettledLift {
  const { window, tempo, sets, restSeconds } = intent;
  const fixed = intent.overrules?.find(({ exercise }) => exercise === place.exercise);
  const done = { window, tempo, sets, restSeconds };
  const wanted: LiftIntent = {
    ...place,
    ...done,
    ...(fixed?.overrules && { overrules: fixed.overrules }),
  };
  const { by } = fixed ?? {};
  const lift = settleLift(wanted, gym, client, limits);
  if (!by || lift.kind === 'unsettled') return withReasons(lift, { muscles, reasons });
  const { variant: _, ...rest } = wanted;
  const other = settleLift({ ...rest, ...by }, gym, client, limits);
  if (other.kind === 'unsettled') {
    const refusal: Refusal = {
      what: 'exercise',
      code: 'session.exercise-not-open',
      message: other.message,
    };
    const kept = { ...lift, refused: [...lift.refused, refusal] };
    return withReasons(kept, { muscles, reasons });
  }
  const marks = { ...other.overruled, exercise: { chosen: place.exercise } };
  const { direct } = other.lift.exercise;
  const why = {
    muscles: muscles.filter((id) => direct[id]),
    reasons: ['Taken in place of what was chosen.'],
  };
  const isOther = by.exercise !== place.exercise;
  return withReasons(
    isOther ? { ...other, overruled: marks } : other,
    isOther ? why : { muscles, reasons },
  );
}

function withReasons(
  lift: SettledLift | UnsettledLift,
  chosenFor: NonNullable<SettledLift['chosenFor']>,
): SettledLift | UnsettledLift {
  return lift.kind === 'settled' ? { ...lift, chosenFor } : lift;
}

function nothingFor(muscle: MuscleId): Refusal {
  return {
    what: 'muscles',
    code: 'session.nothing-for-muscle',
    message: `Nothing in this gym and within these limits has as a prime mover: ${muscleName(muscle)}. Name an exercise, add equipment with its stations, or leave it out.`,
  };
}
