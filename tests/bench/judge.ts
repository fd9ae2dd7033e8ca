import type { Ratio, Size } from './Benchmark.ts';

/** Ratios and sizes that were accepted. */
export interface Baseline {
  readonly ratios: Readonly<Record<string, number>>;
  readonly sizes: Readonly<Record<string, number>>;
}

/**
 * How far a figure may be worse than the baseline. Both sides of a ratio run in one process, but a
 * busy machine slows them unequally: on one with eight jobs on two cores ratios moved by up to
 * two fifths between runs, so a half is where a real loss begins. Sizes move only with the code and
 * the bundler; 2 % is less than any new function and more than a renamed one.
 */
export const margins = { ratio: 0.5, size: 0.02 } as const;

/** What is worse than it may be, as lines; none when all is well. */
export function worse(
  baseline: Baseline,
  ratios: readonly Ratio[],
  sizes: readonly Size[],
): readonly string[] {
  const slower = ratios.flatMap(({ id, value, atLeast = 0 }) => {
    const before = baseline.ratios[id];
    if (value < atLeast) return [`${id}: ${short(value)}, wanted at least ${atLeast}`];
    if (before === undefined || value >= before * (1 - margins.ratio)) return [];
    return [`${id}: ${short(value)}, was ${short(before)}`];
  });
  const larger = sizes.flatMap(({ id, bytes }) => {
    const before = baseline.sizes[id];
    if (before === undefined || bytes <= before * (1 + margins.size)) return [];
    return [`${id}: ${bytes} bytes, was ${before}`];
  });
  return [...slower, ...larger];
}

const short = (value: number) => Number(value.toPrecision(3));
