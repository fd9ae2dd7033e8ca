import type { DueStop } from './dueStopAt.ts';
import { dueStopAt } from './dueStopAt.ts';
import type { LiveSet } from './LiveSet.ts';
import { liveStanding } from './liveStanding.ts';

/**
 * The stop rule that the clock has brought while nothing was said: a hold 5 s past its time, or a
 * set past its longest time. An application asks on every tick and sounds the stop; the next event
 * ends the set by this rule, whatever it is.
 *
 * @param atSeconds now, on the same clock as the events.
 * @returns null when none is due, and before the start and after the end.
 * @example
 * ```ts
 * import { advanceLiveSet, dueStop, startLiveSet } from '@windlass/core/extension';
 * const plan = {
 *   exerciseId: 'leg-extension',
 *   load: { value: 40, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 6,
 *   maxSeconds: 120,
 * } as const;
 * const set = advanceLiveSet(startLiveSet(plan), { kind: 'started', atSeconds: 10 }).set;
 * dueStop(set, 130); // null
 * dueStop(set, 131); // { rule: 'set-too-long', atSeconds: 130 }
 * ```
 */
export function dueStop(set: LiveSet, atSeconds: number): DueStop | null {
  return dueStopAt(set.plan, liveStanding(set), atSeconds);
}
