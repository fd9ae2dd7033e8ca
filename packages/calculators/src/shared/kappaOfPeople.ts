import type { Band } from '@windlass/core/basis';
import type { SourcedRepCurve } from '@windlass/core/strength';

/** Standard deviations that enclose 80 % of a normal distribution. */
const DEVIATIONS_80 = 1.2816;

/** The endurance constant of 8 in 10 people on a curve. */
export function kappaOfPeople({ kappa, kappaLogSd }: SourcedRepCurve): Band {
  const at = (deviations: number) => kappa * Math.exp(deviations * kappaLogSd);
  return { low: at(-DEVIATIONS_80), likely: kappa, high: at(DEVIATIONS_80), level: 0.8 };
}
