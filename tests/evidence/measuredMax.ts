import { kg, scaleLoad } from '../../packages/core/src/load/index.ts';
import {
  forecastReps,
  priorFor,
  type SourcedRepCurve,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';

/** One-rep max that is measured in these comparisons; only shares of it count. */
const MAX_KG = 100;

/**
 * What the library forecasts for a stranger whose one-rep max was measured three days ago: mean
 * count and its standard deviation between people, as studies arrange it.
 */
export function forecastAfterMax(
  curve: SourcedRepCurve,
  share: number,
  secondsPerRep = 3,
): { readonly mean: number; readonly sd: number; readonly chances: readonly number[] } {
  const belief = strengthFrom({
    sets: [{ load: kg(MAX_KG), reps: 1, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
    prior: priorFor(curve),
    today: 3,
  });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  const { chances } = forecastReps(belief, {
    load: scaleLoad(kg(MAX_KG), Number(share.toFixed(6))),
    secondsPerRep,
  });
  const mean = chances.reduce((sum, chance, reps) => sum + chance * reps, 0);
  const square = chances.reduce((sum, chance, reps) => sum + chance * (reps - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(square), chances };
}
