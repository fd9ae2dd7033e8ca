import type { Exercise, MuscleId } from '@windlass/core/anatomy';

const lats: readonly MuscleId[] = ['lats', 'teres-major'];
const elbowFlexors: readonly MuscleId[] = ['biceps', 'brachialis', 'brachioradialis'];
const triceps: readonly MuscleId[] = ['triceps-long-head', 'triceps-short-heads'];

/** What a pair can be for, beside what its isolation exercise is for. */
export const targets = {
  lats,
  'upper-back': ['mid-back', 'rear-deltoid', 'lower-traps'],
  chest: ['chest', 'upper-chest'],
  shoulders: ['side-deltoid', 'front-deltoid'],
  'upper-arm-front': elbowFlexors,
  triceps,
  glutes: ['glutes'],
  'thigh-front': ['vasti', 'rectus-femoris'],
  hamstrings: ['hamstrings'],
} as const satisfies Readonly<Record<string, readonly MuscleId[]>>;

export type TargetId = 'isolation' | keyof typeof targets;

/** The muscles that a pair is for: those named, or the prime movers of its isolation exercise. */
export function targetOf(target: TargetId, { direct }: Pick<Exercise, 'direct'>) {
  return target === 'isolation' ? (Object.keys(direct) as readonly MuscleId[]) : targets[target];
}

/** Helpers that lifters name as the first to give out. */
export const limits = {
  unknown: [],
  triceps,
  'elbow-flexors': elbowFlexors,
  grip: ['grip'],
  'low-back': ['spinal-erectors'],
  'front-of-shoulder': ['front-deltoid'],
} as const satisfies Readonly<Record<string, readonly MuscleId[]>>;

export type LimitId = keyof typeof limits;
