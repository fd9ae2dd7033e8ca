import type { MuscleId } from '../anatomy/index.ts';
import type { PairExercise } from './Pair.ts';

/** The part of an exercise that falls on some muscles; prime movers only, or helpers as well. */
export function targetShare(
  { direct, indirect }: Pick<PairExercise, 'direct' | 'indirect'>,
  target: readonly MuscleId[],
  movers: 'direct' | 'all',
): number {
  return target.reduce(
    (sum, muscle) => sum + (direct[muscle] ?? 0) + (movers === 'all' ? (indirect[muscle] ?? 0) : 0),
    0,
  );
}
