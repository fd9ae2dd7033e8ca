import { repsAtShare } from '../../packages/core/src/strength/index.ts';
import { fitKappa } from './fitKappa.ts';
import { repGroups } from './repCounts.ts';

/** One published mean against the curve with the group's own kappa. */
export interface RepCurveCheck {
  readonly dataSet: string;
  readonly group: string;
  readonly kappa: number;
  readonly share: number;
  readonly observed: number;
  readonly predicted: number;
  /** Largest miss allowed, in repetitions. */
  readonly tolerance: number;
  readonly inside: boolean;
  /** False for rows recalled from memory of the literature: shown, proving nothing. */
  readonly counted: boolean;
}

/** Why a group's mean may lie so far from the curve. */
export const repCurveTolerance =
  'Half a repetition for rounding, and 15 % of the count: twice the error of a mean over 8 to 17 people whose counts spread by a third';

/** Every published mean count against the curve, each group with its own kappa and the same bend. */
export function repCurveChecks(alpha = 0.5): readonly RepCurveCheck[] {
  return repGroups()
    .filter(({ counts }) => counts.length > 1)
    .flatMap(({ dataSet, group, counts, standing }) => {
      const kappa = fitKappa(counts, alpha);
      return counts.map(({ share, reps }) => {
        const predicted = repsAtShare(share, { kappa, alpha });
        const tolerance = 0.5 + 0.15 * reps;
        return {
          dataSet,
          group,
          kappa,
          share,
          observed: reps,
          predicted,
          tolerance,
          inside: Math.abs(predicted - reps) <= tolerance,
          counted: standing === 'verified',
        };
      });
    });
}
