import type { MuscleId } from '../anatomy/index.ts';
import { freshCapacity, restCapacity } from '../capacity/index.ts';
import type { Gym } from '../equipment/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import type { LiftPlan } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import type { KeptLift } from './limit/LiftPieces.ts';
import { minutesOf } from './minutesOf.ts';
import type { LiftPlanner } from './planLift.ts';
import type { SessionMinutes, TimelineItem } from './SessionPlan.ts';
import type { SettledLift, UnsettledLift } from './settleLift.ts';
import { timelineOf } from './timelineOf.ts';

/** What a session is laid out from. */
export interface LayOutQuestion {
  readonly lifts: readonly (SettledLift | UnsettledLift)[];
  readonly client: Client;
  readonly gym: Gym;
  readonly date: string;
  readonly limits: Limits;
  readonly changeSeconds: number;
}

/** Lifts with their loads, one after the other in time. */
export interface LaidOut {
  readonly lifts: readonly LiftPlan[];
  readonly timeline: readonly TimelineItem[];
  readonly minutes: SessionMinutes;
}

/**
 * The lifts of a session one after the other, each from the state in which those before it leave
 * the muscles.
 *
 * @param kept what a time limit leaves of them; all of it when left out.
 */
export function layOut(
  question: LayOutQuestion,
  planOne: LiftPlanner,
  kept?: readonly KeptLift[],
): LaidOut {
  const { client, gym, date, limits, changeSeconds } = question;
  const warm = new Set<MuscleId>();
  let state = freshCapacity();
  let isFirst = true;
  const lifts = question.lifts.map((wanted, place): LiftPlan => {
    if (wanted.kind === 'unsettled') {
      const { intent, reason, message } = wanted;
      return { kind: 'left-out', intent, reason, message, exchanges: [] };
    }
    const left = kept?.find(({ lift }) => lift === place);
    if (kept && !left) return noTime(wanted.lift);
    const { plan, end } = planOne({
      ...wanted,
      lift: left ? withSets(wanted.lift, left.sets) : wanted.lift,
      skipSteps: left?.skipSteps ?? 0,
      client,
      gym,
      date,
      limits,
      start: isFirst ? state : restCapacity(state, changeSeconds),
      warm,
    });
    if (plan.kind === 'left-out') return plan;
    isFirst = false;
    for (const id of Object.keys(wanted.lift.shares) as MuscleId[]) warm.add(id);
    state = end;
    return plan;
  });
  const timeline = timelineOf(lifts, changeSeconds);
  return { lifts, timeline, minutes: minutesOf(timeline) };
}

function withSets(lift: Lift, sets: number): Lift {
  return { ...lift, intent: { ...lift.intent, sets } };
}

function noTime({ intent, exercise }: Lift): LiftPlan {
  const message = `There is no time for ${exercise.name} within the minutes given.`;
  return { kind: 'left-out', intent, reason: 'no-time', message, exchanges: [] };
}
