import type { Source } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import type { NoChoice } from './LoadChoice.ts';
import type { ReachableLoad } from './Loading.ts';

/** Stable name of a way to bridge a step. */
export type BridgeId =
  | 'more-repetitions'
  | 'slower-lowering'
  | 'pause'
  | 'one-side'
  | 'small-plates'
  | 'add-on'
  | 'other-ratio';

/** A way to go on with the load of today until the next one is near enough. */
export interface Bridge {
  readonly id: BridgeId;
  readonly message: string;
  /** For pieces to get: all together they add at most so much. */
  readonly addsAtMost?: Load;
}

/**
 * `ordinary`: take it when the repetitions allow. `large`: more than 10 %, bridge it first.
 * `beyond-repetitions`: more than 40 %, so that no count of repetitions foretells the next load.
 */
export type StepSize = 'ordinary' | 'large' | 'beyond-repetitions';

/** The step to the next heavier load, or why there is none. */
export type StepUp =
  | {
      readonly kind: 'step';
      readonly to: ReachableLoad;
      readonly difference: Load;
      /** Difference in percent of the load of today. */
      readonly percent: number;
      readonly size: StepSize;
      /** Empty for an ordinary step; otherwise in the order to try, one at a time. */
      readonly bridges: readonly Bridge[];
      readonly sources: readonly Source[];
    }
  | NoChoice;
