import type { Station } from './Exercise.ts';
import { stationStandIns } from './stationStandIns.ts';

/**
 * Whether everything is there that an exercise needs besides its load.
 *
 * @param available what the place has; a cable column also serves as high pulley and low row, an
 *   incline bench also as flat bench, and so on ({@link stationStandIns}).
 * @param needed what the exercise needs; nothing needed is always there.
 * @example
 * ```ts
 * import { hasStations } from '@windlass/core/anatomy';
 * hasStations(['cable'], ['high-pulley']); // true
 * hasStations(['flat-bench'], ['incline-bench']); // false
 * ```
 */
export function hasStations(available: readonly Station[], needed: readonly Station[]): boolean {
  return needed.every(
    (station) =>
      available.includes(station) ||
      available.some((other) => stationStandIns[other]?.includes(station)),
  );
}
