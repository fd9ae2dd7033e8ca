import type { Support } from '../anatomy/index.ts';
import type { Caution } from './Caution.ts';
import type { ClientHealth, TrainingContext } from './ClientHealth.ts';

/** What a caution changes in a plan. A field left out changes nothing. */
export interface LimitChange {
  readonly training?: 'refused';
  readonly maximalSingles?: 'refused' | 'off-by-default';
  readonly estimatedMaxima?: 'refused';
  readonly failureChains?: 'refused' | 'off-by-default';
  readonly longHolds?: 'refused' | 'off-by-default';
  readonly forcedReps?: 'refused';
  readonly heartRateTargets?: 'refused';
  readonly unsupervised?: 'refused';
  readonly intensityCap?: number;
  readonly repWindow?: { readonly low: number; readonly high: number };
  readonly repsInReserve?: { readonly atLeast: number; readonly firm: boolean };
  readonly hardLowerings?: number;
  readonly supports?: readonly Support[];
}

/** One caution, when it applies, and what it limits. */
export interface CautionRule {
  readonly caution: Caution;
  readonly when: (client: ClientHealth, context: TrainingContext) => boolean;
  readonly limits?: LimitChange;
  /** Whether a clinician's own word on an item replaces what this rule says about it. */
  readonly clinicianMayReplace: boolean;
}
