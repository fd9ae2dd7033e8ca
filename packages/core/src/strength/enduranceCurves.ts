import type { EnduranceClass } from '../anatomy/index.ts';
import type { SourcedRepCurve } from './RepCurve.ts';
import { cooke, hoeger, pereira, richens, shimano, wolfe } from './repSources.ts';

/**
 * The rep curve to start from for each kind of exercise, at 3 seconds a repetition.
 *
 * Each kappa is the weighted geometric mean over published groups, each fitted by itself; verified
 * groups count double. The spread is that between people with that between groups. Small muscles
 * lose repetitions faster as the load grows.
 */
export const enduranceCurves: Readonly<Record<EnduranceClass, SourcedRepCurve>> = {
  squat: { kappa: 49, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe, cooke, shimano] },
  'leg-press': { kappa: 75, alpha: 0.5, kappaLogSd: 0.4, sources: [richens, hoeger] },
  hinge: { kappa: 51, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe] },
  press: { kappa: 43, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe, hoeger] },
  pull: { kappa: 46, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
  'leg-isolation': { kappa: 27, alpha: 0.5, kappaLogSd: 0.4, sources: [pereira, hoeger] },
  'arm-isolation': { kappa: 30, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
  trunk: { kappa: 30, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
};
