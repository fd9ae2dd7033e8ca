import type { EnduranceClass } from '../anatomy/index.ts';
import type { SourcedRepCurve } from './RepCurve.ts';
import { cooke, hatfield, hoeger, pereira, richens, shimano, wolfe } from './repSources.ts';

/**
 * The rep curve to start from for each kind of exercise, at 3 seconds a repetition.
 *
 * Each kappa is the weighted geometric mean over published groups, each fitted by itself; verified
 * groups count double. The spread is that between people with that between groups. Small muscles
 * lose repetitions faster as the load grows. Presses overhead were counted in one small group, so
 * the presses lying down count beside it as one more.
 */
export const enduranceCurves: Readonly<Record<EnduranceClass, SourcedRepCurve>> = {
  squat: { kappa: 49, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe, cooke, shimano] },
  'leg-press': { kappa: 75, alpha: 0.5, kappaLogSd: 0.4, sources: [richens, hoeger] },
  hinge: { kappa: 51, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe] },
  press: { kappa: 43, alpha: 0.5, kappaLogSd: 0.35, sources: [wolfe, hoeger] },
  'overhead-press': { kappa: 29, alpha: 0.5, kappaLogSd: 0.4, sources: [hatfield, wolfe, hoeger] },
  pull: { kappa: 46, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
  'leg-isolation': { kappa: 27, alpha: 0.5, kappaLogSd: 0.4, sources: [pereira, hoeger] },
  'arm-isolation': { kappa: 30, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
  trunk: { kappa: 30, alpha: 0.5, kappaLogSd: 0.35, sources: [hoeger] },
};
