import { normalBelow } from '../../basis/index.ts';
import type { Plane } from '../grid/Axis.ts';
import type { SetConditions } from '../PerformedSet.ts';
import { forEachCount } from './forEachCount.ts';

/** Cells with less than this share of the probability are left out. */
const NEGLIGIBLE = 1e-8;
/** Counts reach to here; whatever lies beyond is in the last. */
const MOST_REPS = 300;

/**
 * Probabilities of failing after 0, 1, 2, … repetitions, over a belief.
 *
 * Cells with nearly the same mean and spread are put together, with the variance of their means added to that
 * of the count, so that the sum over cells is done once and not for every count.
 */
export function countChances(
  conditions: SetConditions,
  plane: Plane,
  chances: readonly number[],
  alpha: number,
): readonly number[] {
  const bins = new Map<number, Bin>();
  forEachCount(conditions, plane, alpha, (cell, mean, spread) => {
    const weight = chances[cell] as number;
    if (weight < NEGLIGIBLE) return;
    const key = binOf(mean, spread);
    const bin = bins.get(key);
    if (bin === undefined) {
      bins.set(key, {
        weight,
        mean: weight * mean,
        square: weight * (mean * mean + spread * spread),
      });
      return;
    }
    bin.weight += weight;
    bin.mean += weight * mean;
    bin.square += weight * (mean * mean + spread * spread);
  });
  return spreadOut([...bins.values()]);
}

interface Bin {
  weight: number;
  mean: number;
  square: number;
}

/** Bins of a quarter of a repetition around none, growing to both sides, by a third of the spread. */
function binOf(mean: number, spread: number): number {
  return 64 * Math.floor(20 * Math.asinh(mean / 5)) + Math.floor(3 * Math.log(spread));
}

/** Steps of the table for one standard deviation, and how far it reaches: to 2 in a billion. */
const PER_SD = 64;
const REACH = 6;

const table: Float64Array = /* @__PURE__ */ (() =>
  Float64Array.from({ length: 2 * REACH * PER_SD + 2 }, (_, at) =>
    normalBelow(at / PER_SD - REACH),
  ))();

/** `normalBelow` read between the lines of a table, to within 1 in 100,000: it is asked millions of times. */
function below(z: number): number {
  const place = (Math.min(Math.max(z, -REACH), REACH) + REACH) * PER_SD;
  const at = Math.floor(place);
  const from = table[at] as number;
  return from + (place - at) * ((table[at + 1] as number) - from);
}

function spreadOut(bins: readonly Bin[]): readonly number[] {
  const chances: number[] = [];
  let total = 0;
  for (const { weight, mean: weighted, square } of bins) {
    const mean = weighted / weight;
    const sd = Math.sqrt(Math.max(square / weight - mean * mean, 0.01));
    const first = Math.min(MOST_REPS, Math.max(0, Math.floor(mean - 6 * sd)));
    const last = Math.min(MOST_REPS, Math.max(0, Math.ceil(mean + 6 * sd)));
    let done = 0;
    for (let reps = first; reps <= last; reps += 1) {
      const upTo = reps === last ? 1 : below((reps + 0.5 - mean) / sd);
      chances[reps] = (chances[reps] ?? 0) + weight * (upTo - done);
      done = upTo;
    }
    total += weight;
  }
  return Array.from({ length: chances.length }, (_, reps) => (chances[reps] ?? 0) / total);
}
