import { jointFatigueRates } from '../../packages/core/src/capacity/index.ts';
import { generalCurve } from '../../packages/core/src/strength/index.ts';
import { fitKappa } from './fitKappa.ts';
import { fittedRepGroups } from './fittedRepGroups.ts';

/** Seconds under load of the repetitions that the curves are for. */
const SECONDS_PER_REP = 3;

/**
 * Two independent fields of measurement, one constant. A muscle that is held loses capacity at
 * F · load per second, so a repetition of 3 s takes 3 F · load, and the rep curve with bend 1 has
 * kappa = 1 / (3 F).
 */
export function sameConstant() {
  const { fatiguePerSecond } = jointFatigueRates.general;
  const table = fittedRepGroups().find(({ lift }) => lift === 'any');
  return {
    fatiguePerSecond,
    secondsPerRep: SECONDS_PER_REP,
    fromHolds: 1 / (SECONDS_PER_REP * fatiguePerSecond),
    fromCounts: fitKappa(table?.counts ?? [], 1),
    usedKappa: generalCurve.kappa,
    usedAlpha: generalCurve.alpha,
  };
}
