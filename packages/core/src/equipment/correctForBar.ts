import { addLoads, type Load, subtractLoad } from '../load/index.ts';

/** A logged load put right. */
export interface BarCorrection {
  readonly corrected: Load;
  /** Right less logged: the same for every entry made with this mistake. */
  readonly difference: Load;
}

/**
 * A logged total put right when the bar was not the one that was counted. The plates were counted
 * rightly, so the error is the difference between the bars, the same in every entry.
 *
 * @param logged the total as it stands in the log, at least the counted bar.
 * @throws RangeError when the logged total is lighter than the bar that was counted.
 * @example
 * ```ts
 * import { correctForBar } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * toKg(correctForBar(kg(47.5), kg(20), kg(15)).corrected); // 42.5
 * ```
 */
export function correctForBar(logged: Load, countedBar: Load, actualBar: Load): BarCorrection {
  if (!(logged >= countedBar)) {
    throw new RangeError(
      `correctForBar: logged must be at least the counted bar (${countedBar}), got ${logged}`,
    );
  }
  const difference = subtractLoad(actualBar, countedBar);
  return { corrected: addLoads(logged, difference), difference };
}
