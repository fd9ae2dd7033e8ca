import { posteriorOf, stateOf } from './evidence/beliefs.ts';
import { bindingOf } from './evidence/bindingOf.ts';
import { foldSessions } from './evidence/foldSessions.ts';
import { requireSets } from './evidence/requireSets.ts';
import type { PerformedSet } from './PerformedSet.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';

/** What is new since a posterior. */
export interface StrengthNews {
  readonly sets: readonly PerformedSet[];
  readonly today: number;
  /** True when a break was trained through; otherwise over 14 days are a layoff. */
  readonly trained?: boolean;
}

/**
 * The belief brought up to date with later sets, or only with the days gone by: what `strengthFrom`
 * says over all sets, within the error of the grid, at the price of the new ones.
 *
 * @throws RangeError for a set before the posterior's day or after today.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, priorFor, strengthAfter, strengthFrom } from '@windlass/core/strength';
 * const set = { load: kg(40), reps: 8, end: { kind: 'failure' }, day: 0 } as const;
 * const belief = strengthFrom({ sets: [set], prior: priorFor(generalCurve), today: 0 });
 * belief.kind === 'posterior' && strengthAfter(belief, { sets: [], today: 7 }).day; // 7
 * ```
 */
export function strengthAfter(
  posterior: StrengthPosterior,
  { sets, today, trained = false }: StrengthNews,
): StrengthPosterior {
  requireSets('strengthAfter', sets, posterior.day, today);
  const { alpha, lnMax, lnKappa } = posterior;
  const cells = { columns: lnMax.count, rows: lnKappa.count };
  const state = foldSessions(stateOf(posterior), sets, today, { alpha, trained, cells });
  return posteriorOf(state, alpha, bindingOf(sets, posterior.binding));
}
