import type { SessionPlan } from '@windlass/core/session';

const LEAST = 15;
const MOST = 40;

/** Where the rep scales of a plan end: at the next five above all that they show. */
export function rulerEnd(plan: SessionPlan): number {
  const lifts = plan.kind === 'session' ? plan.lifts : [];
  const shown = lifts.flatMap((lift) =>
    lift.kind === 'planned'
      ? [lift.lift.intent.window.maxReps + 1, ...lift.sets.map(({ reps }) => reps.high)]
      : [],
  );
  const highest = Math.max(LEAST, ...shown);
  return Math.min(MOST, Math.ceil(highest / 5) * 5);
}
