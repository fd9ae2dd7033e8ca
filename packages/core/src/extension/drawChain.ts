import { type Band, normalQuantile } from '../basis/index.ts';
import { jointFatigueRates, REST_RECOVERY_PER_SECOND } from '../capacity/index.ts';
import { generalCurve, tempoLaw } from '../strength/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import type { ChainForecastInput } from './ChainForecast.ts';
import { chainParameters } from './chainParameters.ts';

export const DRAW_DIMENSIONS = 9;

/**
 * The lifter at a point of the unit cube; all halves is the likely one.
 *
 * Who tires slowly in repetitions tires slowly in holds: the fatigue rate moves against the
 * endurance constant, by the same factor, with a spread of its own. Who holds more
 * than they lift lowers more, too. Beyond 10 s a repetition, where the pace law was seen to
 * promise up to twice too much, the draws run from the law down to that.
 */
export function drawChain(input: ChainForecastInput, point: readonly number[]): ChainDraw {
  const { kappa, alpha, kappaLogSd } = input.curve ?? generalCurve;
  const rates = input.rates ?? jointFatigueRates.general;
  const { recoveryPerSecond } = rates;
  const [kappaAt = 0.5, paceAt = 0.5, loadAt = 0.5, isoAt = 0.5, eccAt = 0.5, tireAt = 0.5] = point;
  const [, , , , , , restAt = 0.5, partAt = 0.5, loweringAt = 0.5] = point;
  const [low, high] = tempoLaw.observedExponents;
  const exponent = within({ low, likely: tempoLaw.exponent, high, level: 0.8 }, paceAt);
  const endurance = Math.exp(kappaLogSd * normalQuantile(kappaAt));
  const pace = (input.secondsPerRep / tempoLaw.referenceSeconds) ** -exponent;
  const beyond = Math.max(1, input.secondsPerRep / tempoLaw.rangeSeconds[1]) ** -paceAt;
  const isometric = Math.max(1, within(chainParameters.isometric, isoAt));
  const overHolding =
    (input.exercise.eccentricFactor / chainParameters.isometric.likely) *
    within(chainParameters.loweringOverHolding, eccAt);
  const fatiguePerSecond =
    (rates.fatiguePerSecond * within(chainParameters.fatigueRate, tireAt)) / endurance;
  return {
    kappa: kappa * endurance * pace * beyond,
    alpha,
    intensity: input.intensity * within(chainParameters.intensity, loadAt),
    isometric,
    eccentric: isometric * Math.max(1, overHolding),
    partRange: Math.min(isometric, within(chainParameters.partRange, partAt)),
    rates: { fatiguePerSecond, recoveryPerSecond },
    loweringRates: {
      fatiguePerSecond: fatiguePerSecond * within(chainParameters.loweringCost, loweringAt),
      recoveryPerSecond,
    },
    restPerSecond: REST_RECOVERY_PER_SECOND * within(chainParameters.restRecovery, restAt),
  };
}

/** A band of level 0.8 as a distribution: two half normals that meet at the likely value. */
function within({ low, likely, high }: Band, share: number): number {
  const deviate = normalQuantile(share) / TENTH;
  return Math.max(likely / 4, likely + deviate * (deviate < 0 ? likely - low : high - likely));
}

/** Standard deviations from the middle to the ends of a band of level 0.8. */
const TENTH = 1.281_551_565_544_6;
