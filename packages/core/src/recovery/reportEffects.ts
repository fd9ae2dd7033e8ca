import type { MuscleId } from '../anatomy/index.ts';
import { requireNumber, type Source } from '../basis/index.ts';
import type { RecoveryEffect, RecoveryReports, Soreness } from './RecoveryReports.ts';
import { craven2022, ferreiraJscr2017 } from './recoverySources.ts';

/** No study measured factors on hours for these reports, so their sizes are chosen, and bounded. */
const chosenSizes: Source = {
  id: 'windlass-report-factors',
  citation: 'The size of the factor is a choice of this project: no study measured it',
  standing: 'convention',
};

const SORENESS: Readonly<Record<Soreness, number>> = {
  none: 1,
  slight: 1,
  clear: 1.25,
  severe: 1.6,
};
const PER_SHORT_NIGHT = 0.1;
const MOST_SHORT_NIGHTS = 3;

/**
 * What a person's reports do to the hours until one muscle is ready, one entry for each report
 * that changes them.
 *
 * Clear soreness means a quarter longer, severe soreness 1.6 times, as soreness and lost work left
 * the triceps in the same window (Ferreira 2017); no soreness shortens nothing. Each night of 6
 * hours or less adds a tenth, three at most: short sleep lowers performance (Craven 2022). The
 * sizes are this project's choice. A report never shortens the hours, and age is not asked.
 *
 * @param muscle the muscle that soreness is looked up for.
 * @returns an empty list when nothing was reported that changes the hours.
 * @throws RangeError for short nights outside 0 to 60.
 * @example
 * ```ts
 * import { reportEffects } from '@windlass/core/recovery';
 * reportEffects('vasti', { soreness: { vasti: 'clear' } })[0]?.factor; // 1.25
 * reportEffects('vasti', { soreness: { vasti: 'none' } }); // []
 * ```
 */
export function reportEffects(
  muscle: MuscleId,
  reports: RecoveryReports,
): readonly RecoveryEffect[] {
  const effects: RecoveryEffect[] = [];
  const soreness = reports.soreness?.[muscle] ?? 'none';
  if (SORENESS[soreness] > 1) {
    effects.push({
      report: 'soreness',
      factor: SORENESS[soreness],
      says:
        soreness === 'severe'
          ? 'Soreness that hinders everyday movement: the hours are taken as 1.6 times as long.'
          : 'Still clearly sore: the hours are taken as a quarter longer.',
      sources: [ferreiraJscr2017, chosenSizes],
    });
  }
  const nights = reports.shortNights ?? 0;
  requireNumber('reportEffects', 'shortNights', nights, 0, 60);
  if (nights > 0) {
    const counted = Math.min(nights, MOST_SHORT_NIGHTS);
    effects.push({
      report: 'short-nights',
      factor: 1 + PER_SHORT_NIGHT * counted,
      says: `Short nights (6 hours or less): the hours are taken as ${Math.round(100 * PER_SHORT_NIGHT * counted)} % longer.`,
      sources: [craven2022, chosenSizes],
    });
  }
  return effects;
}
