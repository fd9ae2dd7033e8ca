import type { Exercise, MuscleId } from '@windlass/core/anatomy';
import { type CapacityState, capacityFor } from '@windlass/core/capacity';
import { muscleNames } from '../precomputed/pairLifts.ts';

/** One muscle of the compound lift at its first repetition, as shares of its fresh strength. */
export interface MuscleLeft {
  readonly id: MuscleId;
  readonly name: string;
  /** Its part in the compound lift. */
  readonly share: number;
  readonly without: number;
  readonly left: number;
}

/** The muscles of a lift, the largest part first, with what two states leave of each. */
export function musclesLeft(
  { direct, indirect }: Pick<Exercise, 'direct' | 'indirect'>,
  without: CapacityState,
  after: CapacityState,
): readonly MuscleLeft[] {
  const strength = (state: CapacityState, id: MuscleId) =>
    Math.max(0, capacityFor(state, { [id]: 1 }));
  return (Object.entries({ ...direct, ...indirect }) as [MuscleId, number][])
    .toSorted(([, a], [, b]) => b - a)
    .map(([id, share]) => ({
      id,
      name: muscleNames[id] ?? id,
      share,
      without: strength(without, id),
      left: strength(after, id),
    }));
}
