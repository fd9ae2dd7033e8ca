import type { CapacityState } from './CapacityState.ts';

/**
 * The state before the first rep of a session: every muscle has all of its lifting strength.
 *
 * @example
 * ```ts
 * import { capacityFor, freshCapacity } from '@windlass/core/capacity';
 * capacityFor(freshCapacity(), { lats: 1, biceps: 0.5 }); // 1
 * ```
 */
export function freshCapacity(): CapacityState {
  return {};
}
