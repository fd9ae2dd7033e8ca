import type { Load } from '../load/index.ts';
import type { HasLoad, LoadChance } from './LoadChance.ts';
import type { SourcedRepCurve } from './RepCurve.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import type { RepWindow } from './windowShares.ts';

/** How a trial set went, as the lifter or the coach reports it. */
export type FindingReport =
  /** More were left than one can tell: fifteen at least. */
  | 'far-too-easy'
  /** Stopped with about so many left, 0 to 30. */
  | { readonly repsLeft: number }
  /** The next could not be done, or only in poor form: that repetition is not counted. */
  | 'failed'
  | 'form-broke';

/** A trial set as it was done. */
export interface FindingTry {
  readonly load: Load;
  readonly reps: number;
  readonly report: FindingReport;
}

/** The search for a first load, as far as it has come. */
export interface FindingQuestion<C extends HasLoad> {
  /** Every load that can be made. */
  readonly choices: readonly C[];
  readonly window: RepWindow;
  readonly secondsPerRep: number;
  readonly curve: SourcedRepCurve;
  /** Trial sets so far, in order; none at first. */
  readonly tries: readonly FindingTry[];
  /** Heaviest load to start with; the lightest of all when left out. */
  readonly startAt?: Load;
  /** Trial sets at most, 1 to 4; 4 when left out. */
  readonly mostTries?: number;
}

/** Why this load comes next: how easy the last one was. */
export type FindingReason = 'large-step' | 'small-step' | 'down';

/** What to do next. */
export type FindingStep<C extends HasLoad> =
  | {
      readonly kind: 'try';
      readonly choice: C;
      /** Do so many, and stop earlier when only `stopWithLeft` are left. */
      readonly reps: number;
      readonly stopWithLeft: number;
      readonly because: 'start-light' | FindingReason;
    }
  | { readonly kind: 'found'; readonly load: LoadChance<C>; readonly posterior: StrengthPosterior }
  /** The trial sets are used up: work with this load, short of failure, and go on learning. */
  | {
      readonly kind: 'start-and-learn';
      readonly load: LoadChance<C>;
      readonly posterior: StrengthPosterior;
    }
  /** The lightest load that can be made is too heavy for the window. */
  | { readonly kind: 'all-too-heavy'; readonly lightest: C }
  | { readonly kind: 'no-loads' };
