import type { Band } from '../basis/index.ts';
import { forecastReps } from './forecastReps.ts';
import type { HasLoad } from './LoadChance.ts';
import { loadForWindow, type WindowAnswer, type WindowQuestion } from './loadForWindow.ts';

/** The same window at one of several paces. */
export interface PaceAnswer<C extends HasLoad> {
  readonly secondsPerRep: number;
  readonly answer: WindowAnswer<C>;
  /** What the kept load would give at this pace. */
  readonly kept: { readonly reps: Band; readonly setSeconds: Band | undefined };
}

/**
 * What a slower or faster pace does: for each, the load for the same window, and what keeping a load
 * would give instead. Slower repetitions are fewer, and the set lasts longer.
 *
 * @param question as for `loadForWindow`, its own pace left out.
 * @param keep the load that is kept.
 * @param paces seconds under load per repetition, 0.2 to 120 each.
 * @throws RangeError as `loadForWindow` and `forecastReps` do.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, windowByPace, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * if (belief.kind !== 'posterior') throw new Error('no sets');
 * const choices = [80, 90, 100].map((value) => ({ load: kg(value) }));
 * const window = { minReps: 5, maxReps: 7 };
 * const [quick, slow] = windowByPace({ posterior: belief, choices, window }, { load: kg(90) }, [3, 7]);
 * quick && slow && slow.kept.reps.likely < quick.kept.reps.likely; // true
 * ```
 */
export function windowByPace<C extends HasLoad>(
  question: Omit<WindowQuestion<C>, 'secondsPerRep'>,
  keep: C,
  paces: readonly number[],
): readonly PaceAnswer<C>[] {
  const { posterior, capacity = 1, level = 0.8 } = question;
  return paces.map((secondsPerRep) => {
    const { reps, setSeconds } = forecastReps(
      posterior,
      { load: keep.load, secondsPerRep, capacity },
      level,
    );
    return {
      secondsPerRep,
      answer: loadForWindow({ ...question, secondsPerRep }),
      kept: { reps, setSeconds },
    };
  });
}
