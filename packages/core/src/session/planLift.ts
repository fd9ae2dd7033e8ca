import type { MuscleId } from '../anatomy/index.ts';
import { type CapacityState, capacityFor } from '../capacity/index.ts';
import type { Gym } from '../equipment/index.ts';
import type { Limits } from '../safety/index.ts';
import {
  enduranceCurves,
  findingProtocol,
  findingRules,
  oneRepMaxKg,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
} from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import type { Client } from './Client.ts';
import { dayNumber } from './dayNumber.ts';
import type { Lift } from './liftOf.ts';
import { type LiftHistory, performedSets } from './performedSets.ts';
import type { FindingLift, LiftBasis, LiftPlan, PlannedLift } from './SessionPlan.ts';
import { warmUpFor } from './warmUpFor.ts';
import { workLoad } from './workLoad.ts';
import { workSets } from './workSets.ts';

/** One lift, for whom and where, and the muscles as the lifts before it leave them. */
export interface LiftQuestion {
  readonly lift: Lift;
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
 * One lift of a session: its load by what the sets say, its ramp and its work sets, or the way to
 * find a load when nothing is known. The muscles' state goes in and comes out.
 */
export function planLift(question: LiftQuestion): PlannedLiftAndState {
  const { lift, client, gym, date } = question;
  const history = performedSets(lift, client, gym, date);
  const posterior = strengthFrom({
    sets: history.sets,
    prior: priorFor(enduranceCurves[lift.exercise.endurance]),
    today: dayNumber(date),
  });
  if (posterior.kind === 'nothing-known') return findLoad(question, history);
  return planKnown(question, history, posterior);
}

function planKnown(
  { lift, client, limits, start, warm }: LiftQuestion,
  history: LiftHistory,
  posterior: StrengthPosterior,
): PlannedLiftAndState {
  const pace = secondsPerRep(lift.intent.tempo);
  const repsInReserve = limits.repsInReserve.atLeast;
  const chosen = workLoad({
    lift,
    posterior,
    secondsPerRep: pace,
    capacity: capacityFor(start, lift.shares),
    repsInReserve,
    intensityCap: limits.intensityCap?.share ?? 1,
  });
  if (chosen.kind === 'none') {
    const { intent } = lift;
    const { message } = chosen;
    return {
      plan: { kind: 'left-out', intent, reason: 'no-load-for-window', message },
      end: start,
    };
  }
  const { work, reason, lighter, heavier } = chosen;
  const { sets, end } = workSets({
    lift,
    posterior,
    work,
    secondsPerRep: pace,
    repsInReserve,
    start,
  });
  const plan: PlannedLift = {
    kind: 'planned',
    lift,
    secondsPerRep: pace,
    ...(limits.estimatedMaxima.kind === 'allowed' && {
      oneRepMaxKg: oneRepMaxKg(posterior, 0.8, 'today'),
    }),
    repsInReserve,
    work,
    reason,
    ...(lighter && { lighter }),
    ...(heavier && { heavier }),
    warmUp: warmUpFor({ lift, work, experience: client.experience, start, warm }),
    sets,
    basis: basisOf(history),
  };
  return { plan, end };
}

function findLoad({ lift, start }: LiftQuestion, history: LiftHistory): PlannedLiftAndState {
  const pace = secondsPerRep(lift.intent.tempo);
  const step = findingProtocol({
    choices: lift.loads.loads,
    window: lift.intent.window,
    secondsPerRep: pace,
    curve: enduranceCurves[lift.exercise.endurance],
    tries: [],
  });
  if (step.kind !== 'try') {
    const message = `${lift.equipment.name} has no load to begin with for ${lift.exercise.name}.`;
    const plan = { kind: 'left-out', intent: lift.intent, reason: 'no-loads', message } as const;
    return { plan, end: start };
  }
  const plan: FindingLift = {
    kind: 'finding',
    lift,
    secondsPerRep: pace,
    firstTry: step.choice,
    reps: step.reps,
    stopWithLeft: step.stopWithLeft,
    mostTries: findingRules.mostTries,
    basis: basisOf(history),
  };
  return { plan, end: start };
}

function basisOf({ sets, lastDate, passedOver }: LiftHistory): LiftBasis {
  return { sets: sets.length, ...(lastDate !== undefined && { lastDate }), passedOver };
}
