import type { FindingLift, PlannedLift } from '@windlass/core/session';
import type { Planned } from '../../planner/state/planFrom.ts';

/** The lifts of a plan that are done, in the places that they have in a session on the floor. */
export function doneLifts({ plan }: Planned): readonly (PlannedLift | FindingLift)[] {
  const lifts = plan.kind === 'session' ? plan.lifts : [];
  return lifts.flatMap((lift) => (lift.kind === 'left-out' ? [] : [lift]));
}
