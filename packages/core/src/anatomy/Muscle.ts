import type { JointAction } from './Joint.ts';

/** One muscle, or muscles that work as one, under the name the trade uses. */
export type MuscleId =
  | 'chest'
  | 'upper-chest'
  | 'front-deltoid'
  | 'side-deltoid'
  | 'rear-deltoid'
  | 'supraspinatus'
  | 'external-rotators'
  | 'subscapularis'
  | 'lats'
  | 'teres-major'
  | 'upper-traps'
  | 'mid-back'
  | 'lower-traps'
  | 'serratus'
  | 'biceps'
  | 'brachialis'
  | 'brachioradialis'
  | 'triceps-long-head'
  | 'triceps-short-heads'
  | 'wrist-extensors'
  | 'grip'
  | 'abdominals'
  | 'obliques'
  | 'spinal-erectors'
  | 'glutes'
  | 'hip-abductors'
  | 'hip-flexors'
  | 'adductor-magnus'
  | 'adductors'
  | 'rectus-femoris'
  | 'vasti'
  | 'hamstrings'
  | 'gastrocnemius'
  | 'soleus'
  | 'shins';

/** The body part a coach plans by. */
export type MuscleGroup =
  | 'chest'
  | 'shoulders'
  | 'back'
  | 'arms'
  | 'forearms'
  | 'trunk'
  | 'hips'
  | 'thighs'
  | 'lower-legs';

/** A muscle with its names, its group and what it does. */
export interface Muscle {
  readonly id: MuscleId;
  /** As coaches say it. */
  readonly name: string;
  /** As anatomists say it. */
  readonly anatomy: string;
  readonly group: MuscleGroup;
  /** What it does at its joints, main actions first. */
  readonly actions: readonly JointAction[];
  /** Where it is long, when position matters for how hard it can work. */
  readonly longWhen?: string;
}

/**
 * How an exercise's work spreads over muscles: shares between 0 and 1.
 *
 * Shares are a convention of this project, not measured activation: prime movers are `direct`,
 * helpers `indirect`, and both together add up to 1.
 */
export type ExerciseShares = Readonly<Partial<Record<MuscleId, number>>>;
