import type { LiveSet } from './LiveSet.ts';
import { liveSetStep } from './liveSetStep.ts';
import { readyStanding } from './readyStanding.ts';
import type { LiveStanding } from './Standing.ts';

/**
 * Where a set stands: what is being done, what has been measured, whether and why it has ended,
 * and what can be said next.
 *
 * Everything is worked out from the log, so a set that was saved and taken up again stands where
 * it stood. An event in the log that cannot follow the one before is passed over; `resumeLiveSet`
 * finds such logs.
 *
 * @example
 * ```ts
 * import { advanceLiveSet, liveStanding, startLiveSet } from '@windlass/core/extension';
 * const plan = {
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * } as const;
 * const started = advanceLiveSet(startLiveSet(plan), { kind: 'started', atSeconds: 0 }).set;
 * const one = advanceLiveSet(started, { kind: 'rep', atSeconds: 4.5 }).set;
 * liveStanding(one).phase; // 'lifting'
 * liveStanding(one).stages[0]?.seconds; // [4.5]
 * ```
 */
export function liveStanding({ plan, log }: LiveSet): LiveStanding {
  return log.reduce((standing, event) => {
    const step = liveSetStep(plan, standing, event);
    return step.ok ? step.standing : standing;
  }, readyStanding(plan));
}
