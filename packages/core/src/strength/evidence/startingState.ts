import { toKg } from '../../load/index.ts';
import type { LogDensity, Moments } from '../grid/Axis.ts';
import { axisAround } from '../grid/axisAround.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import type { StrengthPrior } from '../StrengthPosterior.ts';
import { vaguePrior } from '../vaguePrior.ts';
import type { BeliefState } from './BeliefState.ts';
import { openDay } from './openDay.ts';
import type { Cells } from './planeAround.ts';

/** The belief before any set; none when neither the prior nor a set says anything about the load. */
export function startingState(
  prior: StrengthPrior,
  sets: readonly PerformedSet[],
  today: number,
  cells: Cells,
): BeliefState | undefined {
  const first = sets.length === 0 ? today : Math.min(...sets.map((set) => set.day));
  const lnMax = prior.lnMax ?? aroundFirst(sets, Math.floor(first));
  if (lnMax === undefined) return undefined;
  const lnKappa = prior.lnMax === undefined ? unmovedByFirst(prior.lnKappa) : prior.lnKappa;
  const plane = {
    columns: axisAround(lnMax, cells.columns),
    rows: axisAround(lnKappa, cells.rows),
  };
  const logs = new Float64Array(cells.columns * cells.rows);
  for (let cell = 0; cell < logs.length; cell += 1) {
    const max = plane.columns.from + plane.columns.step * (cell % cells.columns);
    const kappa = plane.rows.from + plane.rows.step * Math.floor(cell / cells.columns);
    logs[cell] = logNormal(max, lnMax) + logNormal(kappa, lnKappa);
  }
  const density: LogDensity = { ...plane, logs };
  return openDay(density, Math.floor(first));
}

function logNormal(value: number, { mean, sd }: Moments): number {
  return -0.5 * ((value - mean) / sd) ** 2;
}

/**
 * With a one-rep max that could be anything, a single count would favour small kappas, for which
 * more loads give it (in proportion to 1 / kappa). Lifters choose the load to fit the count, so the
 * count alone says nothing about kappa: the prior is moved up by what the first count takes off.
 */
function unmovedByFirst({ mean, sd }: Moments): Moments {
  return { mean: mean + sd * sd, sd };
}

function aroundFirst(sets: readonly PerformedSet[], day: number): Moments | undefined {
  const loads = sets.filter((set) => Math.floor(set.day) === day).map((set) => toKg(set.load));
  if (loads.length === 0) return undefined;
  return { mean: Math.log(Math.max(...loads) / vaguePrior.share), sd: vaguePrior.sd };
}
