import type { Stage } from '../extension/index.ts';
import { dayNumber } from '../recovery/dayNumber.ts';
import {
  enduranceCurves,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
} from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import { allowedChain } from './allowedChain.ts';
import { findingLift } from './findingLift.ts';
import type { FindingLift, LeftOutLift, LiftBasis } from './LiftPlan.ts';
import { liftHistory } from './liftHistory.ts';
import type { LiftQuestion } from './planLift.ts';

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
