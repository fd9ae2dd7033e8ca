import { type Exercise, exercises, type MuscleId } from '../anatomy/index.ts';
import { atHandFrom, type ExchangeSetting, type Suggestion } from '../exchange/index.ts';
import { objections } from '../exchange/objections.ts';
import { readClinicianList } from '../exchange/readClinicianList.ts';
import { type Fit, suggestionsFrom } from '../exchange/suggestionsFrom.ts';
import type { Client } from './Client.ts';
import { equipmentFor } from './equipmentFor.ts';
import type { ExchangePlace } from './exchangesFor.ts';
import { fewestFor } from './fewestFor.ts';
import { muscleName } from './muscleName.ts';

/** An exercise that was chosen for some muscles. */
export interface ChosenExercise {
  readonly exercise: string;
  /** Id of the set-up that it needs. */
  readonly variant?: string;
  readonly equipment: string;
  /** Those of the wanted muscles that it moves with. */
  readonly muscles: readonly MuscleId[];
  readonly reasons: readonly string[];
}

/** What was chosen, and muscles that nothing here trains. */
export interface ChosenExercises {
  readonly chosen: readonly ChosenExercise[];
  readonly without: readonly MuscleId[];
}

/** Beside the share of the work on the wanted muscles. Choices of this project; the order is tested. */
const weights = { helper: 0.5, known: 0.2, steady: 0.15 } as const;
/** A prime mover with a smaller part is not what an exercise is done for. */
const LEAST_SHARE = 0.1;

/**
 * Exercises for muscles that are wanted: as few as have each of them as a prime mover, and of those
 * the ones that fit best. What limits, the gym or being alone rule out is never chosen; then the
 * share of the work on the wanted muscles counts, a load that is known from the log, and for
 * somebody new that the body is held steady. The same question gives the same answer.
 *
 * @returns lifts of several joints first.
 */
export function chooseExercises(
  wanted: readonly MuscleId[],
  place: ExchangePlace,
): ChosenExercises {
  const candidates = suggestions(wanted, place).flatMap((suggestion) => {
    const item = equipmentFor(suggestion.exercise, place);
    const trains = wanted.filter((id) => (suggestion.exercise.direct[id] ?? 0) >= LEAST_SHARE);
    if (!item || suggestion.setUps.length > 1) return [];
    return [{ suggestion, equipment: item.id, trains, score: suggestion.score }];
  });
  const reachable = wanted.filter((id) => candidates.some(({ trains }) => trains.includes(id)));
  const chosen = fewestFor(reachable, candidates)
    .toSorted((a, b) => rank(b.suggestion.exercise) - rank(a.suggestion.exercise))
    .map(({ suggestion, equipment, trains }) => chosenFrom(suggestion, equipment, trains));
  return { chosen, without: wanted.filter((id) => !reachable.includes(id)) };
}

function suggestions(wanted: readonly MuscleId[], place: ExchangePlace): readonly Suggestion[] {
  const { limits, gym, stations, client } = place;
  const setting: ExchangeSetting = {
    limits,
    atHand: atHandFrom(gym, stations.all),
    alone: client.alone,
    toFailure: limits.repsInReserve.atLeast === 0,
  };
  const filter = readClinicianList(limits.notAllowed, exercises);
  if (filter.unread.length > 0) return [];
  return suggestionsFrom(
    exercises,
    setting,
    (candidate) => objections(candidate, setting, filter),
    (candidate) => fitFor(candidate, wanted, client),
  );
}

function fitFor(candidate: Exercise, wanted: readonly MuscleId[], client: Client): Fit | undefined {
  const direct = wanted.reduce((sum, id) => sum + (candidate.direct[id] ?? 0), 0);
  if (direct === 0) return undefined;
  const indirect = wanted.reduce((sum, id) => sum + (candidate.indirect[id] ?? 0), 0);
  const isKnown = client.sets.some(({ exercise }) => exercise === candidate.id);
  const isSteady = client.experience === 'new' && steady.has(candidate.support);
  return {
    score:
      direct +
      weights.helper * indirect +
      (isKnown ? weights.known : 0) +
      (isSteady ? weights.steady : 0),
    reasonsFor: [
      {
        code: 'works-the-muscles',
        words: `${Math.round(100 * direct)} % of its work falls on what is wanted.`,
      },
      ...(isKnown ? [{ code: 'load-known', words: 'Its load is known from the log.' }] : []),
      ...(isSteady
        ? [{ code: 'steady', words: 'The body is held steady, which is easier to begin with.' }]
        : []),
    ],
    reasonsAgainst: [],
  };
}

const steady: ReadonlySet<Exercise['support']> = new Set([
  'seated',
  'seated-with-back',
  'lying',
  'face-down',
  'chest-supported',
]);

function rank({ span }: Exercise): number {
  return span === 'compound' ? 1 : 0;
}

function chosenFrom(
  { exercise, setUps, reasonsFor, reasonsAgainst }: Suggestion,
  equipment: string,
  trains: readonly MuscleId[],
): ChosenExercise {
  const [setUp] = setUps;
  return {
    exercise: exercise.id,
    ...(setUp && { variant: setUp.id }),
    equipment,
    muscles: trains,
    reasons: [
      `Chosen for: ${trains.map(muscleName).join(', ')}.`,
      ...[...reasonsFor, ...reasonsAgainst].map(({ words }) => words),
    ],
  };
}
