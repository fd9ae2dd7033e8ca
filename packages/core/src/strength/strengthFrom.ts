import { posteriorOf } from './evidence/beliefs.ts';
import { bindingOf } from './evidence/bindingOf.ts';
import { foldSessions } from './evidence/foldSessions.ts';
import { USUAL_CELLS } from './evidence/planeAround.ts';
import { requireSets } from './evidence/requireSets.ts';
import { startingState } from './evidence/startingState.ts';
import type { PerformedSet } from './PerformedSet.ts';
import type { NothingKnown, StrengthPosterior, StrengthPrior } from './StrengthPosterior.ts';

/** The sets of one lifter on one lift, and the day that is asked about. */
export interface StrengthEvidence {
  readonly sets: readonly PerformedSet[];
  readonly prior: StrengthPrior;
  /** Day counted like the sets' days, not before any of them. */
  readonly today: number;
  /** True when breaks in the list were trained through; otherwise over 14 days are a layoff. */
  readonly trained?: boolean;
  /** Cells of the grid across and down, for checking; 96 by 32 when left out. */
  readonly cells?: { readonly columns: number; readonly rows: number };
}

/**
 * What a lifter's sets say about strength and endurance on a lift, as a grid of probabilities.
 *
 * A Bayesian filter over ln(one-rep max) and ln(kappa). Each set to failure, stopped with some left,
 * stopped at a target, or failed outright bears on both through the rep curve; its noise is the
 * published repeat error with what the pace, the load's lightness and tiredness add
 * (`evidenceModel`). Sets of one day share that day's form. Between sessions the belief widens, and
 * after a layoff it falls (`strengthDrift`). One set in twenty may be wrong, so sets that contradict
 * each other leave a wide answer (`setContributions` names them).
 *
 * @returns the belief on the day; `nothing-known` without any set and without a prior for the load.
 * @throws RangeError for a load of 0 or less, or a day after today.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, oneRepMaxKg, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(40), reps: 8, end: { kind: 'failure' }, day: 0, secondsPerRep: 4 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * belief.kind === 'posterior' && oneRepMaxKg(belief).low > 40; // true
 * ```
 */
export function strengthFrom(evidence: StrengthEvidence): StrengthPosterior | NothingKnown {
  const { sets, prior, today, trained = false, cells = USUAL_CELLS } = evidence;
  requireSets('strengthFrom', sets, Number.NEGATIVE_INFINITY, today);
  const start = startingState(prior, sets, today, cells);
  if (start === undefined) return { kind: 'nothing-known' };
  const state = foldSessions(start, sets, today, { alpha: prior.alpha, trained, cells });
  return posteriorOf(state, prior.alpha, bindingOf(sets, 'prior-only'));
}
