import type { MuscleId } from '../anatomy/index.ts';
import { type CapacityState, restCapacity } from '../capacity/index.ts';
import type { Gym } from '../equipment/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import { doSet, type SetDone } from './doSet.ts';
import type { JoinIntent } from './Intent.ts';
import { knownLift } from './knownLift.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import type { ChosenFor, LiftOverruled, LiftPlan, Refusal } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import type { LoadedLift } from './loadedLift.ts';
import { loadedLift } from './loadedLift.ts';
import { planJoined } from './planJoined.ts';
import { plannedLift } from './plannedLift.ts';
import { together } from './together.ts';

/** One lift, for whom and where, and the muscles as the lifts before it leave them. */
export interface LiftQuestion {
  readonly lift: Lift;
  /** What was overruled of its intent, and what was refused. */
  readonly overruled: LiftOverruled;
  readonly refused: readonly Refusal[];
  readonly chosenFor?: ChosenFor;
  /** How many of the lightest warm-up sets a time limit takes. */
  readonly skipSteps: number;
  /** A time limit takes the part of the last set past lifting failure. */
  readonly skipChain: boolean;
  readonly client: Client;
  readonly gym: Gym;
  readonly date: string;
  readonly limits: Limits;
  /** What the muscles have lost when the lift begins. */
  readonly start: LiftFatigue;
  /** Muscles that earlier lifts of the session have worked. */
  readonly warm: ReadonlySet<MuscleId>;
  /** The lift that this one is done in rounds with. */
  readonly joined?: { readonly how: JoinIntent; readonly second: LiftQuestion };
}

/** A planned lift, and what its own sets have left of its muscles. */
export interface PlannedLiftAndState {
  readonly plan: LiftPlan;
  readonly end: CapacityState;
  /** The same of the lift that it is done in rounds with. */
  readonly second?: Omit<PlannedLiftAndState, 'second'>;
}

/** Plans one lift of a session, or two that are done in rounds. */
export type LiftPlanner = (question: LiftQuestion) => PlannedLiftAndState;

/**
 * One lift of a session: its load by what the sets say or by what somebody has fixed, its ramp and
 * its work sets, or the way to find a load when nothing is known; or two lifts done in rounds. The
 * muscles' state goes in and comes out.
 */
export function planLift(question: LiftQuestion): PlannedLiftAndState {
  const { start, joined } = question;
  if (joined) return planJoined(question, joined, planLift);
  const known = knownLift(question);
  if (known.kind !== 'known') return { plan: known, end: start.own };
  const loaded = loadedLift(known, together(start.own, start.carried));
  if (loaded.kind !== 'loaded') return { plan: loaded, end: start.own };
  return straightSets(loaded, question);
}

/** The sets of a lift one after the other. */
function straightSets(loaded: LoadedLift, { lift, start }: LiftQuestion): PlannedLiftAndState {
  const { intent } = lift;
  const sets: SetDone[] = [];
  let { own, carried } = start;
  for (let set = 0; set < intent.sets; set += 1) {
    if (set > 0) {
      own = restCapacity(own, intent.restSeconds);
      carried = restCapacity(carried, intent.restSeconds);
    }
    const done = doSet(loaded, { own, carried }, set + 1 === intent.sets);
    sets.push(done);
    own = done.own;
  }
  return { plan: plannedLift(loaded, sets), end: own };
}
