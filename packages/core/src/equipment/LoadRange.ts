import type { Load } from '../load/index.ts';

/** Which loads are wanted; all of them where an end is not given. */
export interface LoadRange {
  readonly lightest?: Load;
  readonly heaviest?: Load;
}
