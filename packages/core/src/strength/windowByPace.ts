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
