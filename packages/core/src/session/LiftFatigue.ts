import type { CapacityState } from '../capacity/index.ts';

/** What the muscles of a lift have lost when it begins. */
export interface LiftFatigue {
  /** By earlier sets of the same exercise. */
  readonly own: CapacityState;
  /** By other exercises, as far as it shows in this one (`pairRules.transfer`). */
  readonly carried: CapacityState;
}

/** Fatigue by exercise, each as its own sets left it. */
export type SessionFatigue = ReadonlyMap<string, CapacityState>;
