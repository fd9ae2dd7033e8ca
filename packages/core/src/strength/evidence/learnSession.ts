import { evidenceFigures } from '../evidenceFigures.ts';
import type { Axis, LogDensity, Moments, Plane } from '../grid/Axis.ts';
import { blur } from '../grid/blur.ts';
import { momentsOf } from '../grid/momentsOf.ts';
import { resample } from '../grid/resample.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { forEachCount } from './forEachCount.ts';
import { type Cells, planeAround } from './planeAround.ts';
import { scatterScale } from './scatterScale.ts';
import { type Likelihood, setLikelihood } from './setLikelihood.ts';

export interface Learned {
  readonly usual: LogDensity;
  readonly today: LogDensity;
}

/**
 * What one session teaches: its sets share the form of the day, a normal error of ln(one-rep max).
 * So the usual strength learns from their joint likelihood smeared by that error, and the strength
 * of today from the smeared prior and the likelihood itself.
 *
 * The plane is laid over the result: it is narrowed round by round, each with the likelihood
 * averaged over the coarse cells, until it fits.
 */
export function learnSession(
  before: LogDensity,
  sets: readonly PerformedSet[],
  alpha: number,
  cells: Cells,
): Learned {
  const seen = sets.map((set) => ({ set, chance: setLikelihood(set, true) }));
  const rough = { columns: Math.ceil(cells.columns / 2), rows: Math.ceil(cells.rows / 2) };
  let plane = planeAround(momentsOf(before), rough);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { columns, rows } = momentsOf(learnOn(plane, before, seen, alpha, 'all').usual);
    const next = planeAround(
      { columns: widen(columns, plane.columns.step), rows: widen(rows, plane.rows.step) },
      rough,
    );
    const settled =
      next.columns.step > SETTLED * plane.columns.step &&
      next.rows.step > SETTLED * plane.rows.step;
    plane = next;
    if (settled) break;
  }
  return learnOn(divide(plane, cells), before, seen, alpha, 'one-sided');
}

const MOST_ROUNDS = 6;
const SETTLED = 0.7;

interface Seen {
  readonly set: PerformedSet;
  readonly chance: Likelihood;
}

function widen({ mean, sd }: Moments, step: number): Moments {
  return { mean, sd: Math.hypot(sd, step / 2) };
}

/** The same plane in other cells. */
function divide({ columns, rows }: Plane, cells: Cells): Plane {
  const part = ({ from, step, count }: Axis, fresh: number): Axis => ({
    from: from - step / 2 + (step * count) / fresh / 2,
    step: (step * count) / fresh,
    count: fresh,
  });
  return { columns: part(columns, cells.columns), rows: part(rows, cells.rows) };
}

/** Learning on a given plane, with the likelihood of all or of one-sided sets averaged over a cell. */
function learnOn(
  plane: Plane,
  before: LogDensity,
  seen: readonly Seen[],
  alpha: number,
  averaged: 'all' | 'one-sided',
): Learned {
  const scale = scatterScale(before);
  const day = (lnKappa: number) => evidenceFigures.day * scale(lnKappa);
  const prior = resample(before, plane);
  const logs = new Float64Array(prior.logs.length);
  for (const { set, chance } of seen) {
    const oneSided = set.end.kind === 'more' || set.reps === 0;
    const grain = averaged === 'all' || oneSided ? plane.columns.step / Math.sqrt(12) : 0;
    const add = (cell: number, mean: number, spread: number) => {
      logs[cell] = (logs[cell] as number) + Math.log(chance(mean, spread));
    };
    forEachCount(set, plane, alpha, add, grain);
  }
  const shown: LogDensity = { ...plane, logs };
  return {
    usual: times(prior, blur(shown, 'columns', day, 'hold')),
    today: times(blur(prior, 'columns', day, 'empty'), shown),
  };
}

function times(one: LogDensity, other: LogDensity): LogDensity {
  return { ...one, logs: one.logs.map((log, cell) => log + (other.logs[cell] as number)) };
}
