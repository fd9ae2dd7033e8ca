import { type Band, normalBelow, normalQuantile, requireNumber } from '../basis/index.ts';
import { dateOfDay } from '../recovery/dayNumber.ts';
import { evidenceModel, generalCurve, type RepCurve } from '../strength/index.ts';
import type { LiftSession } from './LiftSession.ts';
import { fitLine, type TrendPoint } from './review/fitLine.ts';
import { strengthMeasure } from './review/strengthMeasure.ts';
import { topSets } from './topSets.ts';

/** How sessions are turned into strength. */
export interface TrendOptions {
  /** The rep curve of the lift at its pace; the general one when left out. */
  readonly curve?: RepCurve;
  /**
   * What a session counts as: its best set, or the mean of its top sets. The mean says more where
   * all sessions have the same sets with the same load.
   */
  readonly by?: 'best-set' | 'mean-of-top-sets';
  readonly level?: number;
}

/** Where the strength on a lift is going. */
export interface StrengthTrend {
  readonly kind: 'trend';
  readonly sessions: number;
  /** Percent a week; below 0 when it falls. */
  readonly percentPerWeek: Band;
  /** The line through the sessions, as one-rep maxima in kg, oldest first. */
  readonly line: readonly {
    readonly date: string;
    readonly measured: number;
    readonly fitted: Band;
  }[];
  /** Probability that it rises at all; `chanceOfRate` has it for any rate. */
  readonly chanceRising: number;
  /** The slope of ln(one-rep max) a day. */
  readonly slope: { readonly mean: number; readonly sd: number };
}

/** Too little to draw a line through. */
export interface NoTrend {
  readonly kind: 'too-few-sessions';
  readonly sessions: number;
}

/**
 * The trend of strength over sessions, as a band and as probabilities.
 *
 * A straight line through ln(one-rep max), each session weighed by how well its sets tell it
 * (repeat error of a count, day-to-day form of 2.5 %); a session scatter larger than that widens
 * the band. Before any session a gain or loss of 1 % a week is held as likely as not (beginners
 * gained 1.5 % a week, Braith 1993). It looks back only: what the next set will give is answered
 * by the posterior of `@windlass/core/strength`.
 *
 * @param sessions oldest first, all of one exercise; tagged ones are the caller's to leave out.
 * @returns `too-few-sessions` below three, or when all are of one day.
 * @throws RangeError for a load of 0 or less or a level outside 0.01 to 0.999.
 * @example
 * ```ts
 * import { strengthTrend } from '@windlass/core/progress';
 * strengthTrend([]); // { kind: 'too-few-sessions', sessions: 0 }
 * ```
 */
export function strengthTrend(
  sessions: readonly LiftSession[],
  { curve = generalCurve, by = 'best-set', level = 0.8 }: TrendOptions = {},
): StrengthTrend | NoTrend {
  requireNumber('strengthTrend', 'level', level, 0.01, 0.999);
  const points = sessions.map((session) => pointOf(session, curve, by));
  if (points.length < 3 || points[0]?.day === points.at(-1)?.day) {
    return { kind: 'too-few-sessions', sessions: sessions.length };
  }
  const fit = fitLine(points);
  const reach = normalQuantile((1 + level) / 2);
  const band = (middle: number, sd: number, read: (value: number) => number): Band => ({
    low: read(middle - reach * sd),
    likely: read(middle),
    high: read(middle + reach * sd),
    level,
  });
  return {
    kind: 'trend',
    sessions: sessions.length,
    percentPerWeek: band(fit.slope, fit.slopeSd, asPercentPerWeek),
    line: points.map(({ day, y }) => {
      const from = day - fit.centre;
      const sd = Math.hypot(fit.levelSd, fit.slopeSd * from);
      return {
        date: dateOfDay(day),
        measured: Math.exp(y),
        fitted: band(fit.level + fit.slope * from, sd, Math.exp),
      };
    }),
    chanceRising: normalBelow(fit.slope / fit.slopeSd),
    slope: { mean: fit.slope, sd: fit.slopeSd },
  };
}

function pointOf(session: LiftSession, curve: RepCurve, by: TrendOptions['by']): TrendPoint {
  const form = evidenceModel.day.value ** 2;
  if (by === 'mean-of-top-sets') {
    const measures = topSets(session).sets.map((set) => strengthMeasure(set, curve));
    const count = measures.length;
    return {
      day: session.day,
      y: measures.reduce((sum, { lnMax }) => sum + lnMax, 0) / count,
      variance: form + measures.reduce((sum, { variance }) => sum + variance, 0) / count ** 2,
    };
  }
  const best = session.sets
    .map((set) => strengthMeasure(set, curve))
    .reduce((top, measure) => (measure.lnMax > top.lnMax ? measure : top));
  return { day: session.day, y: best.lnMax, variance: form + best.variance };
}

function asPercentPerWeek(perDay: number): number {
  return 100 * (Math.exp(7 * perDay) - 1);
}
