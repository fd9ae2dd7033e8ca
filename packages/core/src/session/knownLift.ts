import { type CapacityState, capacityFor } from '../capacity/index.ts';
import type { Stage } from '../extension/index.ts';
import { dayNumber } from '../recovery/dayNumber.ts';
import {
  enduranceCurves,
  oneRepMaxKg,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
} from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import { allowedChain } from './allowedChain.ts';
import { type ChosenLoad, chosenLoad } from './chosenLoad.ts';
import type { SetDone } from './doSet.ts';
import { findingLift } from './findingLift.ts';
import type { FindingLift, LeftOutLift, LiftBasis, PlannedLift } from './LiftPlan.ts';
import { liftHistory } from './liftHistory.ts';
import type { LiftQuestion } from './planLift.ts';
import { type LiftWarmUp, warmUpFor } from './warmUpFor.ts';

/** A lift with what its client's sets say about it. */
export interface KnownLift {
  readonly kind: 'known';
  readonly question: LiftQuestion;
  readonly posterior: StrengthPosterior;
  readonly secondsPerRep: number;
  readonly repsInReserve: number;
  readonly basis: LiftBasis;
  /** The stages of its last set, where it goes on past lifting failure. */
  readonly chain?: readonly Stage[];
}

/** A lift with its load and its warm-up; its sets are still to come. */
export interface LoadedLift {
  readonly kind: 'loaded';
  readonly known: KnownLift;
  readonly load: Extract<ChosenLoad, { kind: 'found' }>;
  readonly warmUp: LiftWarmUp;
}

/** What the sets say about a lift, or how to find its load where they say nothing. */
export function knownLift(question: LiftQuestion): KnownLift | FindingLift | LeftOutLift {
  const { lift, client, gym, date, limits } = question;
  const { sets, lastDate, passedOver } = liftHistory(lift, client, gym, date);
  const posterior = strengthFrom({
    sets,
    prior: priorFor(enduranceCurves[lift.exercise.endurance]),
    today: dayNumber(date),
  });
  const basis = {
    sets: sets.length,
    ...(lastDate !== undefined && { lastDate }),
    passedOver,
  };
  if (posterior.kind === 'nothing-known') return findingLift(question, basis);
  const { stages, refused } = allowedChain(question);
  return {
    kind: 'known',
    question: { ...question, refused: [...question.refused, ...refused] },
    ...(stages && { chain: stages }),
    posterior,
    secondsPerRep: secondsPerRep(lift.intent.tempo),
    repsInReserve: limits.repsInReserve.atLeast,
    basis,
  };
}

/** The load and the warm-up of a lift whose muscles are in this state, or why it is left out. */
export function loadedLift(known: KnownLift, state: CapacityState): LoadedLift | LeftOutLift {
  const { question, posterior, repsInReserve } = known;
  const { lift, limits, client, warm, skipSteps } = question;
  const load = chosenLoad(
    {
      lift,
      posterior,
      secondsPerRep: known.secondsPerRep,
      repsInReserve,
      capacity: capacityFor(state, lift.shares),
      intensityCap: limits.intensityCap?.share ?? 1,
    },
    limits,
  );
  if (load.kind === 'none') {
    const { message } = load;
    const { intent } = lift;
    return { kind: 'left-out', intent, reason: 'no-load-for-window', message, exchanges: [] };
  }
  const { work } = load;
  const { experience } = client;
  const warmUp = warmUpFor({ lift, work, experience, start: state, warm, skipSteps });
  return { kind: 'loaded', known, load, warmUp };
}

/** The plan of a loaded lift, with what its sets will probably give. */
export function plannedLift(
  { known, load, warmUp }: LoadedLift,
  done: readonly SetDone[],
): PlannedLift {
  const chain = done.at(-1)?.chain;
  const { question, posterior, basis } = known;
  const { work, reason, lighter, heavier } = load;
  return {
    kind: 'planned',
    lift: question.lift,
    secondsPerRep: known.secondsPerRep,
    ...(question.limits.estimatedMaxima.kind === 'allowed' && {
      oneRepMaxKg: oneRepMaxKg(posterior, 0.8, 'today'),
    }),
    repsInReserve: known.repsInReserve,
    work,
    reason,
    ...(lighter && { lighter }),
    ...(heavier && { heavier }),
    warmUp: warmUp.warmUp,
    sets: done.map(({ set }) => set),
    ...(chain && { chain }),
    basis,
    ...(question.chosenFor && { chosenFor: question.chosenFor }),
    overruled: { ...question.overruled, ...load.overruled, ...warmUp.overruled },
    refused: [...question.refused, ...load.refused, ...warmUp.refused],
  };
}
