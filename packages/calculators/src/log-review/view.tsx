import { dateOfDay, dayNumber } from '@windlass/core/recovery';
import { inUnit } from '../shared/inUnit.ts';
import { formatDayMonth } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { TrendChart } from '../ui/TrendChart.tsx';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { liftName } from './liftName.ts';
import { said } from './words.ts';

interface LogReviewViewProps {
  readonly input: LogReviewInput;
  readonly result: LogReviewResult;
}

/** Older sessions have no room. */
const MOST_DOTS = 90;

/** What the sessions of the lift say of strength, with the trend of the last eight weeks. */
export function LogReviewView({ input: { show }, result: { review, lift } }: LogReviewViewProps) {
  const own = review.lifts.find(({ exercise }) => exercise === lift);
  if (own === undefined || own.allAlong.kind !== 'trend') {
    return <p>{said.noTrend(own?.sessions ?? 0)}</p>;
  }
  const kg = (value: number) => inUnit(value, show);
  const { lately } = own;
  const dots = own.allAlong.line
    .slice(-MOST_DOTS)
    .map(({ date, measured }) => ({ day: dayNumber(date), value: kg(measured) }));
  const line = (lately.kind === 'trend' ? lately.line : []).map(({ date, fitted }) => ({
    day: dayNumber(date),
    low: kg(fitted.low),
    likely: kg(fitted.likely),
    high: kg(fitted.high),
  }));
  const rate = lately.kind === 'trend' ? rateWords(lately.percentPerWeek) : said.noLately;
  return (
    <>
      <p class="wl-pieces">{rate}</p>
      <p class="wl-pieces-label">{said.trendLabel(liftName(lift), show)}</p>
      <TrendChart
        dots={dots}
        line={line}
        days={dots.map(({ day }) => ({
          day,
          name: formatDayMonth(dateOfDay(day)),
        }))}
        says={said.trendSays(liftName(lift), rate, dots.length)}
      />
    </>
  );
}

/** A change a week, with what 8 in 10 lie between. */
export function rateWords(rate: { low: number; likely: number; high: number }): string {
  const signed = (value: number) => `${value > 0.005 ? '+' : ''}${formatNumber(value, 1)}`;
  return said.rate(signed(rate.likely), signed(rate.low), signed(rate.high));
}
