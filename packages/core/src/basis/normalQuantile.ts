import { normalBelow } from './normalBelow.ts';

/** The z below which a share of the standard normal distribution lies, by halving between -8 and 8. */
export function normalQuantile(share: number): number {
  let [low, high] = [-8, 8];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
