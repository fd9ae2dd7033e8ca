import type { ReachableLoad } from '@windlass/core/equipment';

/** From one load to the next heavier. */
export interface LoadJump {
  readonly from: ReachableLoad;
  readonly to: ReachableLoad;
  readonly percent: number;
}

/** Every step of a list of loads, in percent of the lower one; none from a load of 0. */
export function loadJumps(loads: readonly ReachableLoad[]): readonly LoadJump[] {
  return loads.slice(1).flatMap((to, at) => {
    const from = loads[at];
    if (!from || from.load <= 0) return [];
    return [{ from, to, percent: (100 * (to.load - from.load)) / from.load }];
  });
}

/** Up to this many percent a step is taken as it is. */
export const ORDINARY = 10;

/** The largest step in percent; none where there is no step. */
export function largestOf(jumps: readonly LoadJump[]): LoadJump | undefined {
  return jumps.reduce<LoadJump | undefined>(
    (largest, jump) => (largest && largest.percent >= jump.percent ? largest : jump),
    undefined,
  );
}
