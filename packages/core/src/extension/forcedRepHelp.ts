import type { Band } from '../basis/index.ts';

/**
 * Peak help that a partner gave, as a share of the load, on the first and the second repetition
 * after failure: median and quartiles of 37 people on a guided bench press at 10 to 12 RM
 * (Giessing, Steele and Fisher). The peak is the most at one moment, so the mean help is less.
 */
export const forcedRepHelp: readonly Band[] = [
  { low: 0.117, likely: 0.193, high: 0.245, level: 0.5 },
  { low: 0.228, likely: 0.332, high: 0.418, level: 0.5 },
];
