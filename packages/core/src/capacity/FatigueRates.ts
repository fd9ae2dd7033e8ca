import type { Source } from '../basis/index.ts';

/** How fast a sustained contraction tires a muscle, and how fast it recovers. */
export interface FatigueRates {
  /** Loss per second under full load, as a share of the active part (F of the published model). */
  readonly fatiguePerSecond: number;
  /** Recovery per second while under load, as a share of the fatigued part (R). */
  readonly recoveryPerSecond: number;
}

/** A joint whose sustained efforts were studied; `general` is the fit over all of them. */
export type StudiedJoint = 'shoulder' | 'elbow' | 'knee' | 'ankle' | 'trunk' | 'grip' | 'general';

/** Published rates of one joint, with what they rest on. */
export interface JointFatigueRates extends FatigueRates {
  /** Recovery at rest is this many times the recovery under load (r). */
  readonly restMultiplier: number;
  readonly sources: readonly Source[];
}
