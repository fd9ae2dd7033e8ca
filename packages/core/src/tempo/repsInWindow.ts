import { requireNumber } from '../basis/index.ts';
import type { SetTiming } from './SetTiming.ts';
import { secondsOf, setMilliseconds } from './setMilliseconds.ts';
import type { Tempo } from './Tempo.ts';

/** A span of time that a set is to last, both ends included. */
export interface TimeWindow {
  readonly minSeconds: number;
  readonly maxSeconds: number;
}

/** A number of repetitions and how long they take. */
export interface TimedReps {
  readonly reps: number;
  readonly seconds: number;
}

/** Which counts fit a time window, or the nearest ones when none does. */
export type RepsInWindow =
  | { readonly kind: 'fits'; readonly fewest: TimedReps; readonly most: TimedReps }
  | { readonly kind: 'between'; readonly shorter: TimedReps; readonly longer: TimedReps };

/**
 * The repetitions whose set lasts no less and no more than a time window, at a tempo.
 *
 * Every count from `fewest` to `most` fits. When no count does, because one repetition more jumps
 * over the window, the counts on either side are given and none is rounded into it; `shorter` is
 * 0 reps when one repetition is already too long.
 *
 * @param window seconds from 0 to 3600 to the millisecond, `minSeconds` not above `maxSeconds`.
 * @throws RangeError for another window, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { repsInWindow } from '@windlass/core/tempo';
 * const bench = { lowerSeconds: 3, pauseAfterLowerSeconds: 2, liftSeconds: 1, pauseAfterLiftSeconds: 0 };
 * repsInWindow(bench, { minSeconds: 40, maxSeconds: 60 }, { lastPause: 'counted' });
 * // { kind: 'fits', fewest: { reps: 7, seconds: 42 }, most: { reps: 10, seconds: 60 } }
 * ```
 */
export function repsInWindow(tempo: Tempo, window: TimeWindow, timing: SetTiming): RepsInWindow {
  const { minSeconds, maxSeconds } = window;
  requireNumber('repsInWindow', 'maxSeconds', maxSeconds, 0, 3600);
  requireNumber('repsInWindow', 'minSeconds', minSeconds, 0, maxSeconds);
  const parts = setMilliseconds('repsInWindow', tempo, timing);
  const withCut = (seconds: number) => Math.round(seconds * 1000) + parts.cutAtEnd;
  const fewest = Math.max(1, Math.ceil(withCut(minSeconds) / parts.ofRep));
  const most = Math.floor(withCut(maxSeconds) / parts.ofRep);
  const timed = (reps: number): TimedReps => ({ reps, seconds: secondsOf(parts, reps) });
  return fewest <= most
    ? { kind: 'fits', fewest: timed(fewest), most: timed(most) }
    : { kind: 'between', shorter: timed(most), longer: timed(fewest) };
}
