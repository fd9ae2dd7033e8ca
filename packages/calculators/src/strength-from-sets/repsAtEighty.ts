import type { Band } from '@windlass/core/basis';
import { repsAtShare } from '@windlass/core/strength';

/** The share at which endurance is told: heavy enough to be near a work set, light enough to differ. */
const EIGHTY = 0.8;

/** Reps to failure at 80 % of the one-rep max, at 3 s a rep, for endurance constants. */
export function repsAtEighty({ low, likely, high, level }: Band, alpha: number): Band {
  const reps = (kappa: number) => repsAtShare(EIGHTY, { kappa, alpha });
  return { low: reps(low), likely: reps(likely), high: reps(high), level };
}
