import type { SourcedRepCurve } from './RepCurve.ts';
import { repSources } from './repSources.ts';

/**
 * The curve for a lift and a lifter nothing is known about, at 3 seconds a repetition: kappa fitted
 * to the general table of 952 tests, its spread that between people and between lifts together.
 */
export const generalCurve: SourcedRepCurve = {
  kappa: 38.5,
  alpha: 0.5,
  kappaLogSd: 0.45,
  sources: [repSources.nuzzo],
};
