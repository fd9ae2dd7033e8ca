import type { MuscleId } from '../anatomy/index.ts';
import { type CapacityState, capacityFor } from '../capacity/index.ts';
import type { Gym } from '../equipment/index.ts';
import { dayNumber } from '../recovery/dayNumber.ts';
import type { Limits } from '../safety/index.ts';
import {
  enduranceCurves,
  oneRepMaxKg,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
} from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import type { Client } from './Client.ts';
import { chosenLoad } from './chosenLoad.ts';
import { findingLift } from './findingLift.ts';
import type { LiftOverruled, LiftPlan, PlannedLift, Refusal } from './LiftPlan.ts';
import { type LiftHistory, liftHistory } from './liftHistory.ts';
import type { Lift } from './liftOf.ts';
import { warmUpFor } from './warmUpFor.ts';
import { workSets } from './workSets.ts';

/** One lift, for whom and where, and the muscles as the lifts before it leave them. */
export interface LiftQuestion {
  readonly lift: Lift;
  /** What was overruled of its intent, and what was refused. */
  readonly overruled: LiftOverruled;
  readonly refused: readonly Refusal[];
  /** How many of the lightest warm-up sets a time limit takes. */
  readonly skipSteps: number;
  readonly client: Client;
  readonly gym: Gym;
  readonly date: string;
  readonly limits: Limits;
  /** State of the muscles when the lift begins. */
  readonly start: CapacityState;
  /** Muscles that earlier lifts of the session have worked. */
  readonly warm: ReadonlySet<MuscleId>;
}

/** A planned lift, and the muscles after it. */
export interface PlannedLiftAndState {
  readonly plan: LiftPlan;
  readonly end: CapacityState;
}

/** Plans one lift of a session. */
export type LiftPlanner = (question: LiftQuestion) => PlannedLiftAndState;

/**
 * One lift of a session: its load by what the sets say or by what somebody has fixed, its ramp and
 * its work sets, or the way to find a load when nothing is known. The muscles' state goes in and
 * comes out.
 */
export function planLift(question: LiftQuestion): PlannedLiftAndState {
  const { lift, client, gym, date, start } = question;
  const history = liftHistory(lift, client, gym, date);
  const posterior = strengthFrom({
    sets: history.sets,
    prior: priorFor(enduranceCurves[lift.exercise.endurance]),
    today: dayNumber(date),
  });
  return posterior.kind === 'nothing-known'
    ? { plan: findingLift(question, basisOf(history)), end: start }
    : planKnown(question, history, posterior);
}

function planKnown(
  question: LiftQuestion,
  history: LiftHistory,
  posterior: StrengthPosterior,
): PlannedLiftAndState {
  const { lift, client, limits, start, warm, skipSteps } = question;
  const pace = secondsPerRep(lift.intent.tempo);
  const repsInReserve = limits.repsInReserve.atLeast;
  const conditions = { lift, posterior, secondsPerRep: pace, repsInReserve };
  const load = chosenLoad(
    {
      ...conditions,
      capacity: capacityFor(start, lift.shares),
      intensityCap: limits.intensityCap?.share ?? 1,
    },
    limits,
  );
  if (load.kind === 'none') {
    const { message } = load;
    const reason = 'no-load-for-window';
    return {
      plan: { kind: 'left-out', intent: lift.intent, reason, message, exchanges: [] },
      end: start,
    };
  }
  const { work, lighter, heavier } = load;
  const { experience } = client;
  const ramp = warmUpFor({ lift, work, experience, start, warm, skipSteps });
  const { sets, end } = workSets({ ...conditions, work, start });
  const plan: PlannedLift = {
    kind: 'planned',
    lift,
    secondsPerRep: pace,
    ...(limits.estimatedMaxima.kind === 'allowed' && {
      oneRepMaxKg: oneRepMaxKg(posterior, 0.8, 'today'),
    }),
    repsInReserve,
    work,
    reason: load.reason,
    ...(lighter && { lighter }),
    ...(heavier && { heavier }),
    warmUp: ramp.warmUp,
    sets,
    basis: basisOf(history),
    overruled: { ...question.overruled, ...load.overruled, ...ramp.overruled },
    refused: [...question.refused, ...load.refused, ...ramp.refused],
  };
  return { plan, end };
}

function basisOf({ sets, lastDate, passedOver }: LiftHistory) {
  return { sets: sets.length, ...(lastDate !== undefined && { lastDate }), passedOver };
}
