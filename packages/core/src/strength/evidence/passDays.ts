import type { LogDensity } from '../grid/Axis.ts';
import { blur } from '../grid/blur.ts';
import { momentsOf } from '../grid/momentsOf.ts';
import { resample } from '../grid/resample.ts';
import { strengthDrift } from '../strengthDrift.ts';
import { type Cells, planeAround } from './planeAround.ts';
import { scatterScale } from './scatterScale.ts';

/** What days without a set of this lift do to the belief. */
export interface DaysPassed {
  readonly days: number;
  /** True when the lift, or one like it, was trained all the same: no loss, only doubt. */
  readonly trained: boolean;
}

/** The belief after some days: wider, and lower after a layoff. */
export function passDays(before: LogDensity, passed: DaysPassed, cells: Cells): LogDensity {
  if (passed.days === 0) return before;
  const { loss, maxSd, kappaSd } = driftOver(passed);
  const { columns, rows } = momentsOf(before);
  const plane = planeAround(
    {
      columns: { mean: columns.mean, sd: Math.hypot(columns.sd, maxSd) },
      rows: { mean: rows.mean, sd: Math.hypot(rows.sd, kappaSd) },
    },
    cells,
  );
  const scale = scatterScale(before);
  const spread = blur(
    blur(resample(before, plane), 'columns', (lnKappa) => maxSd * scale(lnKappa), 'empty'),
    'rows',
    kappaSd,
    'empty',
  );
  return { ...spread, columns: { ...plane.columns, from: plane.columns.from - loss } };
}

/** Loss of ln(one-rep max) and the added standard deviations: who does not train loses, and gains nothing. */
export function driftOver({ days, trained }: DaysPassed): {
  readonly loss: number;
  readonly maxSd: number;
  readonly kappaSd: number;
} {
  const { maxPerDay, kappaPerDay, kappaMostDays, layoff } = strengthDrift;
  const idle = trained ? 0 : Math.max(0, days - layoff.graceDays);
  const loss = layoff.most * (1 - Math.exp(-idle / layoff.scaleDays));
  return {
    loss,
    maxSd: Math.hypot(Math.sqrt(maxPerDay * (days - idle)), layoff.doubt * loss),
    kappaSd: Math.sqrt(kappaPerDay * Math.min(days, kappaMostDays)),
  };
}
