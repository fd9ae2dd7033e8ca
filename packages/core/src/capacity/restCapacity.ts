import { requireNumber } from '../basis/index.ts';
import type { CapacityState } from './CapacityState.ts';
import { REST_RECOVERY_PER_SECOND } from './capacityRates.ts';

/**
 * The state after resting: the fast part of every muscle's fatigue decays as `e^(−rate·t)`, the
 * slow part stays.
 *
 * @param restSeconds 0 or more. Zero changes nothing.
 * @param recoveryPerSecond 0 or more; published general value when left out (half-time 51 s).
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { restCapacity } from '@windlass/core/capacity';
 * const halfTimeSeconds = Math.LN2 / 0.01365;
 * restCapacity({ lats: { fast: 0.2, slow: 0.05 } }, halfTimeSeconds); // { lats: { fast: 0.1, slow: 0.05 } }
 * ```
 */
export function restCapacity(
  state: CapacityState,
  restSeconds: number,
  recoveryPerSecond: number = REST_RECOVERY_PER_SECOND,
): CapacityState {
  requireNumber('restCapacity', 'restSeconds', restSeconds, 0);
  requireNumber('restCapacity', 'recoveryPerSecond', recoveryPerSecond, 0);
  const kept = Math.exp(-recoveryPerSecond * restSeconds);
  return Object.fromEntries(
    Object.entries(state).map(([muscle, { fast, slow }]) => [muscle, { fast: fast * kept, slow }]),
  );
}
