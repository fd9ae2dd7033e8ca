import type { Axis } from './grid/Axis.ts';
import type { PerformedSet } from './PerformedSet.ts';

/** What is believed about a lifter on a lift before any set: normal in both logarithms. */
export interface StrengthPrior {
  /** Mean and SD of ln(one-rep max in kg); left out when nothing is known. */
  readonly lnMax?: { readonly mean: number; readonly sd: number };
  /** Mean and SD of ln(kappa) at 3 seconds a repetition. */
  readonly lnKappa: { readonly mean: number; readonly sd: number };
  /** Bend of the rep curve. */
  readonly alpha: number;
}

/** Which side the sets bind the one-rep max from. */
export type Binding = 'prior-only' | 'floor-only' | 'ceiling-only' | 'both-sides';

/**
 * What is believed about a lifter on a lift on a day: probabilities over a grid of ln(one-rep max
 * in kg), the columns, by ln(kappa), the rows; cell = row * columns + column. Plain data, to keep
 * and to read back as JSON.
 */
export interface StrengthPosterior {
  readonly kind: 'posterior';
  readonly day: number;
  readonly alpha: number;
  readonly lnMax: Axis;
  readonly lnKappa: Axis;
  /** The strength that lasts, free of the day's form. Sums to 1. */
  readonly usual: readonly number[];
  /** Strength on this very day, with its form as far as today's sets have shown it. Sums to 1. */
  readonly today: readonly number[];
  readonly binding: Binding;
  /** The sets of this day and the usual strength before them, which a later set today needs. */
  readonly session: { readonly before: StrengthBelief; readonly sets: readonly PerformedSet[] };
}

/** Probabilities over a grid of their own. */
export interface StrengthBelief {
  readonly lnMax: Axis;
  readonly lnKappa: Axis;
  readonly chances: readonly number[];
}

/** No set and no prior for the one-rep max: there is nothing to say. */
export interface NothingKnown {
  readonly kind: 'nothing-known';
}
