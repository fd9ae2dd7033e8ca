import type { SourcedRepCurve } from './RepCurve.ts';
import { nuzzo } from './repSources.ts';

/**
 * The curve for a lift and a lifter nothing is known about, at 3 seconds a repetition. Its kappa
 * gives back the general table of 952 tests, which is known in whole repetitions, row by row: any
 * from 38.0 to 39.8 does, and 38.2 also keeps the equations that coaches use in common at five to
 * ten repetitions. Its spread is that between people and between lifts together.
 */
export const generalCurve: SourcedRepCurve = {
  kappa: 38.2,
  alpha: 0.5,
  kappaLogSd: 0.45,
  sources: [nuzzo],
};
