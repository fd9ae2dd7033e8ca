import { type Band, requireNumber } from '../basis/index.ts';
import { type Load, toKg } from '../load/index.ts';
import { evidenceFigures } from './evidenceFigures.ts';
import { generalCurve } from './generalCurve.ts';
import { kappaAtTempo } from './kappaAtTempo.ts';
import type { HasLoad } from './LoadChance.ts';
import type { RepCurve, SourcedRepCurve } from './RepCurve.ts';
import { shareForReps } from './shareForReps.ts';
import { type RepWindow, windowShares } from './windowShares.ts';

/** One set to failure, and the window that is wanted. */
export interface OneSetQuestion<C extends HasLoad> {
  readonly set: { readonly load: Load; readonly reps: number; readonly secondsPerRep: number };
  readonly window: RepWindow;
  readonly secondsPerRep: number;
  /** Loads that can be made; may be empty. */
  readonly choices: readonly C[];
  readonly curve?: SourcedRepCurve;
  /** Share of fresh strength left for the set asked about. */
  readonly capacity?: number;
}

/** The load for the window from that set alone. */
export interface OneSetAnswer<C extends HasLoad> {
  readonly oneRepMaxKg: Band;
  /** Load that fails in the middle of the window. */
  readonly targetKg: Band;
  /** Loads whose likely count rounds into the window. */
  readonly windowKg: { readonly lightest: number; readonly heaviest: number };
  /** The choice nearest to the target in proportion, the lighter of equals; none when there is none. */
  readonly nearest: C | undefined;
  /** Share by which to change the load for each repetition the first set misses the window. */
  readonly sharePerRep: number;
  readonly warnings: readonly ('above-10-reps' | 'other-pace' | 'pace-outside-range')[];
}

/** 80 % of a normal distribution lies within this many standard deviations. */
const REACH = 1.2816;

/**
 * The load for a rep window at a pace from one set to failure, by the rep curve alone.
 *
 * The set gives the one-rep max, the window its share of it, each with kappa at its own pace; the
 * likely target is the set's load times the ratio of the two shares, so the same window at the same
 * pace gives back the same load. The bands take kappa over its spread between people and the count
 * over its repeat error. With more than one set, `loadForWindow` knows more.
 *
 * @param question reps of the set whole, 1 to 100; window 1 to 200; paces 0.2 to 120 s a repetition.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { windowLoadFromSet } from '@windlass/core/strength';
 * const same = windowLoadFromSet({
 *   set: { load: kg(100), reps: 8, secondsPerRep: 3 },
 *   window: { minReps: 8, maxReps: 8 },
 *   secondsPerRep: 3,
 *   choices: [{ load: kg(97.5) }, { load: kg(100) }],
 * });
 * same.targetKg.likely; // 100
 * ```
 */
export function windowLoadFromSet<C extends HasLoad>(question: OneSetQuestion<C>): OneSetAnswer<C> {
  const { set, window, secondsPerRep, choices, curve = generalCurve, capacity = 1 } = question;
  requireNumber('windowLoadFromSet', 'load', set.load, 1);
  requireNumber('windowLoadFromSet', 'reps', set.reps, 1, 100);
  const loadKg = toKg(set.load);
  const middle = (window.minReps + window.maxReps) / 2;
  const setCurve = (kappa: number) => curveAt(kappa, curve, set.secondsPerRep);
  const asked = (kappa: number) => curveAt(kappa, curve, secondsPerRep);
  const max = (kappa: number, reps: number) => loadKg / shareForReps(reps, setCurve(kappa));
  const target = (kappa: number, reps: number) =>
    loadKg * (shareForReps(middle, asked(kappa), capacity) / shareForReps(reps, setCurve(kappa)));
  const shares = windowShares(window, asked(curve.kappa), capacity);
  const oneRepMaxKg = bandOf(max, curve, set.reps);
  const targetKg = bandOf(target, curve, set.reps);
  const next = shareForReps(middle + 1, asked(curve.kappa), capacity);
  return {
    oneRepMaxKg,
    targetKg,
    windowKg: {
      lightest: oneRepMaxKg.likely * shares.lightest,
      heaviest: oneRepMaxKg.likely * shares.heaviest,
    },
    nearest: nearestTo(targetKg.likely, choices),
    sharePerRep: 1 - next / shares.middle,
    warnings: [
      ...(set.reps > 10 ? (['above-10-reps'] as const) : []),
      ...(set.secondsPerRep !== secondsPerRep ? (['other-pace'] as const) : []),
      ...([set.secondsPerRep, secondsPerRep].some(isOutside)
        ? (['pace-outside-range'] as const)
        : []),
    ],
  };
}

function curveAt(kappa: number, { alpha }: RepCurve, secondsPerRep: number): RepCurve {
  return { kappa: kappaAtTempo(kappa, secondsPerRep).kappa.likely, alpha };
}

function isOutside(secondsPerRep: number): boolean {
  return kappaAtTempo(1, secondsPerRep).kind !== 'within';
}

/** The value over kappa's spread and the count's repeat error, the two put together in logarithms. */
function bandOf(
  value: (kappa: number, reps: number) => number,
  { kappa, kappaLogSd }: SourcedRepCurve,
  reps: number,
): Band {
  const likely = value(kappa, reps);
  const { base, perRep } = evidenceFigures.repeat;
  const slack = REACH * (base + perRep * reps);
  const ratios = [
    [
      value(kappa * Math.exp(REACH * kappaLogSd), reps),
      value(kappa * Math.exp(-REACH * kappaLogSd), reps),
    ],
    [value(kappa, reps + slack), value(kappa, Math.max(1, reps - slack))],
  ].map((pair) => pair.map((one) => Math.log(one / likely)));
  const side = (pick: (...values: number[]) => number) =>
    likely * Math.exp(pick(-1, 1) * Math.hypot(...ratios.map((pair) => pick(0, ...pair))));
  return { low: side(Math.min), likely, high: side(Math.max), level: 0.8 };
}

function nearestTo<C extends HasLoad>(kg: number, choices: readonly C[]): C | undefined {
  const distance = (choice: C) => Math.abs(Math.log(toKg(choice.load) / kg));
  return choices
    .filter((choice) => choice.load > 0)
    .sort((a, b) => a.load - b.load)
    .reduce<C | undefined>(
      (best, one) => (best === undefined || distance(one) < distance(best) - 1e-12 ? one : best),
      undefined,
    );
}
