import { normalBelow } from '../../basis/index.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { failureReps } from './failureReps.ts';

/** Probability of an outcome at least as far out as this one, where these counts were expected. */
export function surpriseOf({ reps, end }: PerformedSet, chances: readonly number[]): number {
  const from = (first: number) => chances.slice(first).reduce((sum, chance) => sum + chance, 0);
  if (end.kind === 'more') return from(reps + end.atLeast);
  if (end.kind === 'failure') return Math.min(1, 2 * Math.min(from(reps), 1 - from(reps + 1)));
  const { reps: total, doubt } = failureReps(reps, end.repsLeft);
  const mean = chances.reduce((sum, chance, count) => sum + chance * count, 0);
  const square = chances.reduce((sum, chance, count) => sum + chance * (count - mean) ** 2, 0);
  return 2 * normalBelow(-Math.abs(total - mean) / Math.hypot(Math.sqrt(square), doubt));
}
