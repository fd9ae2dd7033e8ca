import { requireNumber } from '../basis/index.ts';

/** How well lowerings are kept to time. */
export interface LoweringControl {
  /**
   * `lost`: the last one was shorter than the threshold. `going`: at this trend the next one will
   * be. `kept`: neither. `too-few`: fewer than three, so there is no trend yet.
   */
  readonly kind: 'too-few' | 'kept' | 'going' | 'lost';
  /** A lowering shorter than this is no longer under control. */
  readonly thresholdSeconds: number;
  /** Change from one lowering to the next; null with fewer than three. */
  readonly slopeSeconds: number | null;
  /** How long the next one will be at this trend; null with fewer than three. */
  readonly nextSeconds: number | null;
}

/**
 * Whether slow lowerings are still under control.
 *
 * The threshold is 4 s, or four fifths of what was asked where that is less: a lowering that can
 * no longer be stretched to it is the last. The trend is the least-squares line through the last
 * four. Both are training practice, not measurements.
 *
 * @param seconds of each lowering, in order, at least one.
 * @param askedSeconds of each, above 0.
 * @throws RangeError for no lowerings, or seconds out of range.
 * @example
 * ```ts
 * import { loweringControl } from '@windlass/core/extension';
 * loweringControl([6, 5.5, 5], 6); // { kind: 'kept', thresholdSeconds: 4, slopeSeconds: -0.5, nextSeconds: 4.5 }
 * loweringControl([6, 5, 4], 6).kind; // 'going'
 * loweringControl([6, 3], 6).kind; // 'lost'
 * ```
 */
export function loweringControl(seconds: readonly number[], askedSeconds: number): LoweringControl {
  requireNumber('loweringControl', 'lowerings', seconds.length, 1);
  requireNumber('loweringControl', 'askedSeconds', askedSeconds, Number.MIN_VALUE);
  for (const one of seconds) requireNumber('loweringControl', 'seconds', one, 0);
  const thresholdSeconds = Math.min(4, 0.8 * askedSeconds);
  const lost = (seconds.at(-1) ?? 0) < thresholdSeconds;
  if (seconds.length < 3) {
    const kind = lost ? 'lost' : 'too-few';
    return { kind, thresholdSeconds, slopeSeconds: null, nextSeconds: null };
  }
  const { slope, next } = lineThrough(seconds.slice(-4));
  const going = slope < 0 && next < thresholdSeconds;
  const kind = lost ? 'lost' : going ? 'going' : 'kept';
  return { kind, thresholdSeconds, slopeSeconds: slope, nextSeconds: next };
}

/** Least squares over positions 0, 1, 2 …; `next` is the line one position on. */
function lineThrough(values: readonly number[]): { readonly slope: number; readonly next: number } {
  const middle = (values.length - 1) / 2;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  let along = 0;
  let spread = 0;
  values.forEach((value, position) => {
    along += (position - middle) * value;
    spread += (position - middle) ** 2;
  });
  const slope = along / spread;
  return { slope, next: mean + slope * (values.length - middle) };
}
