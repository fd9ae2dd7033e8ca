import { requireNumber } from '../basis/index.ts';
import type { LiveSet, LiveSetPlan } from './LiveSet.ts';
import { orderRefusals } from './orderRefusals.ts';

/**
 * A set that is about to be done: nothing has happened yet.
 *
 * @param plan its stages are an allowed chain from `planChain`, or lifting alone.
 * @throws RangeError for stages out of order, seconds per rep outside 0.2 to 120, a longest time
 *   outside 10 to 3600 s.
 * @example
 * ```ts
 * import { liveStanding, startLiveSet } from '@windlass/core/extension';
 * const set = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * liveStanding(set).phase; // 'ready'
 * ```
 */
export function startLiveSet(plan: LiveSetPlan): LiveSet {
  requireNumber('startLiveSet', 'secondsPerRep', plan.secondsPerRep, 0.2, 120);
  requireNumber('startLiveSet', 'maxSeconds', plan.maxSeconds, 10, 3600);
  const [refusal] = orderRefusals(plan.stages);
  if (refusal) throw new RangeError(`startLiveSet: ${refusal.why} ${refusal.instead}`);
  return { plan, log: [], undone: [] };
}
