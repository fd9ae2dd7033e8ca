import type { JointId, PositionId, Support } from '../anatomy/index.ts';
import type { Side } from './ClientHealth.ts';

/** Why something is limited: a caution's id, or `clinician`, and a sentence to show. */
export interface LimitReason {
  readonly from: string;
  readonly words: string;
}

/** `off-by-default`: not offered, but the coach may switch it on. `refused`: not offered at all. */
export type Permission =
  | { readonly kind: 'allowed' }
  | { readonly kind: 'off-by-default' | 'refused'; readonly reasons: readonly LimitReason[] };

/** `avoid`: not loaded in that position. `ease`: less load or range there, and only if it does not hurt. */
export interface PositionLimit {
  readonly position: PositionId;
  readonly level: 'avoid' | 'ease';
  readonly reason: LimitReason;
}

/** What a plan for this person may contain. Other folders obey it. */
export interface Limits {
  /** Whether a plan may be made at all before somebody was asked. */
  readonly training: Permission;
  readonly maximalSingles: Permission;
  /** Naming a one-rep max from a set of several repetitions. */
  readonly estimatedMaxima: Permission;
  /** Going on past lifting failure: holds, lowerings, lighter loads without rest. */
  readonly failureChains: Permission;
  /** Holding a hard load still for more than a few seconds. */
  readonly longHolds: Permission;
  /** Repetitions finished with a partner's help. */
  readonly forcedReps: Permission;
  readonly heartRateTargets: Permission;
  /** Heaviest load as a share of the one-rep max. */
  readonly intensityCap?: { readonly share: number; readonly reasons: readonly LimitReason[] };
  /** Repetitions a set is usually given. */
  readonly repWindow?: {
    readonly low: number;
    readonly high: number;
    readonly reasons: readonly LimitReason[];
  };
  /** Repetitions left at the end of a set; `firm` when a coach may not lower it. */
  readonly repsInReserve: {
    readonly atLeast: number;
    readonly firm: boolean;
    readonly reasons: readonly LimitReason[];
  };
  /** Most lowerings at or past failure for one muscle in one session. */
  readonly hardLowerings?: { readonly count: number; readonly reasons: readonly LimitReason[] };
  /** Training without somebody qualified there. */
  readonly unsupervised: Permission;
  readonly positions: readonly PositionLimit[];
  /** Ways of being supported that are not used. */
  readonly supports: readonly { readonly support: Support; readonly reason: LimitReason }[];
  /** Joints not loaded before a clinician was asked. */
  readonly joints: readonly { readonly joint: JointId; readonly reason: LimitReason }[];
  readonly handsOutOfUse: readonly Side[];
  /** The clinician's own words about what is not to be done. */
  readonly notAllowed: readonly string[];
  /** The clinician's pain limit, 0 to 10. */
  readonly painLimit?: number;
}
