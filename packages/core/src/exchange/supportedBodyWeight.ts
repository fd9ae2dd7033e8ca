import { type Band, requireNumber, type Source } from '../basis/index.ts';
import { type PushUpForm, supportedShareSources, supportedShares } from './supportedShares.ts';

/** Kilograms on the hands in a push-up. */
export interface SupportedBodyWeight {
  readonly topKg: Band;
  readonly bottomKg: Band;
  readonly notes: readonly string[];
  readonly sources: readonly Source[];
}

/** Standard normal quantile for the middle 80 %. */
const EIGHTY_PERCENT = 1.2816;

/**
 * How much of the body the hands carry in a push-up, at the top and at the bottom.
 *
 * mean share × body weight, with the middle 80 % of people as a band. Measured while holding still.
 *
 * @param form feet or knees on the floor.
 * @param bodyWeightKg 20 to 300.
 * @throws RangeError for a body weight outside that.
 * @example
 * ```ts
 * import { supportedBodyWeight } from '@windlass/core/exchange';
 * Math.round(supportedBodyWeight('feet-on-floor', 75).topKg.likely); // 50
 * ```
 */
export function supportedBodyWeight(form: PushUpForm, bodyWeightKg: number): SupportedBodyWeight {
  requireNumber('supportedBodyWeight', 'bodyWeightKg', bodyWeightKg, 20, 300);
  const { top, bottom } = supportedShares[form];
  const band = ({ mean, sd }: typeof top): Band => ({
    low: (mean - EIGHTY_PERCENT * sd) * bodyWeightKg,
    likely: mean * bodyWeightKg,
    high: (mean + EIGHTY_PERCENT * sd) * bodyWeightKg,
    level: 0.8,
  });
  return {
    topKg: band(top),
    bottomKg: band(bottom),
    notes: [
      'Held still: what a machine should be set to is to be tried, starting lower. It is not the same exercise.',
      'Raised feet put more of the body on the hands, raised hands less.',
    ],
    sources: supportedShareSources,
  };
}
