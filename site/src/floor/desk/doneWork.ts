import type { LiftWork } from '@windlass/core/session';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { DoneSet, FloorState } from '../run/FloorState.ts';
import type { FloorSession, FloorStep } from '../session/FloorSession.ts';
import { doneLifts } from './doneLifts.ts';

type Ending = Required<Pick<LiftWork, 'repsInReserve' | 'stagesPastFailure'>>;

/**
 * The work of a session as recovery counts it: every set by how it ended, and by the stages past
 * failure that were done of it. Warm-up sets are none; of the two sides of a set the one that went
 * further counts; how an untold set ended is taken from the plan.
 */
export function doneWork(
  planned: Planned,
  session: Pick<FloorSession, 'steps' | 'lifts'>,
  { done }: Pick<FloorState, 'done'>,
): readonly LiftWork[] {
  const lifts = doneLifts(planned);
  const sets = Map.groupBy(
    session.steps.flatMap((step, place) => {
      const set = done.get(place);
      return set && isWork(step, set) ? [{ step, set }] : [];
    }),
    ({ step: { lift, kind, number } }) => `${lift}|${kind}|${number}`,
  );
  return [...sets.values()].flatMap((sides): readonly LiftWork[] => {
    const lift = sides[0]?.step.lift ?? -1;
    const exercise = lifts[lift]?.lift.exercise;
    if (!exercise) return [];
    const usual = session.lifts[lift]?.repsInReserve ?? 0;
    const endings = sides.map(({ set }) => endingOf(set, usual));
    const repsInReserve = Math.min(...endings.map((one) => one.repsInReserve));
    const stagesPastFailure = Math.max(...endings.map((one) => one.stagesPastFailure));
    return [{ exercise, sets: 1, repsInReserve, stagesPastFailure }];
  });
}

function isWork({ kind }: FloorStep, { reps, end }: DoneSet): boolean {
  return kind !== 'warm-up' && (reps > 0 || end?.kind === 'failure');
}

function endingOf({ end, pastFailure }: DoneSet, usual: number): Ending {
  const stagesPastFailure = pastFailure?.stagesDone ?? 0;
  if (!end) return { repsInReserve: usual, stagesPastFailure };
  if (end.kind === 'failure') return { repsInReserve: 0, stagesPastFailure };
  const repsInReserve = end.kind === 'reserve' ? end.repsLeft : end.atLeast;
  return { repsInReserve, stagesPastFailure };
}
