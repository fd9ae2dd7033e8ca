import type { RepWindow } from '@windlass/core/strength';

/** `8–11`, or `8` for a window of one count. */
export function windowWords({ minReps, maxReps }: RepWindow): string {
  return minReps === maxReps ? String(minReps) : `${minReps}–${maxReps}`;
}
