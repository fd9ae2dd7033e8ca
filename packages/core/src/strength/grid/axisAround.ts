import type { Axis, Moments } from './Axis.ts';

/** Half width of a grid in standard deviations; the mass left out is below one in 100,000. */
const REACH = 4.5;

/** An axis of `count` cells over the mean and 4.5 standard deviations to both sides. */
export function axisAround({ mean, sd }: Moments, count: number): Axis {
  const step = (2 * REACH * sd) / count;
  return { from: mean - REACH * sd + step / 2, step, count };
}
