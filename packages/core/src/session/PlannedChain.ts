import type { Band } from '../basis/index.ts';
import type { ChainDose, ChainNeed, StageForecast } from '../extension/index.ts';

/** How the last set of a lift goes on past lifting failure. */
export interface PlannedChain {
  /** Lifting to failure first, then each further stage with what to expect of it. */
  readonly stages: readonly StageForecast[];
  /** Over all stages, one side of a one-sided lift. */
  readonly secondsUnderLoad: Band;
  /** What it likely adds to the set, with the pauses between stages and both sides. */
  readonly addedSeconds: number;
  /** Recovery that the set costs, in sets to failure. */
  readonly dose: ChainDose;
  /** What has to be there before the set. */
  readonly needs: readonly ChainNeed[];
  /** What the bands rest on. */
  readonly notes: readonly string[];
  /** For whom going on past failure is not planned, by the safety rules. */
  readonly notFor: readonly string[];
}
