import type { MuscleId } from '../anatomy/index.ts';
import { recoveryModel } from './recoveryModel.ts';

/** How a set was done, as far as it changes what it costs. */
export interface SetManner {
  readonly repsInReserve: number;
  readonly stagesPastFailure: number;
  readonly loweringHeavy: boolean;
  /** 0 familiar to 1 never done before. */
  readonly unaccustomed: number;
}

/**
 * What one direct set costs a muscle, counted in hard, familiar sets to lifting failure.
 * Factors on the hours are turned into factors on the dose by the exponent between the two.
 */
export function setCost(manner: SetManner, muscle: MuscleId): number {
  const { fitted, pastFailure, mostReserve, reserveLostWhenNew, regions } = recoveryModel;
  const { unaccustomed } = manner;
  const reserve = Math.min(manner.repsInReserve, mostReserve);
  const logHours =
    -fitted.reserve * reserve * (1 - reserveLostWhenNew * unaccustomed) +
    (manner.loweringHeavy ? fitted.lowering : 0) +
    unaccustomed * (fitted.unaccustomed + Math.log(regions.factors[muscle] ?? 1));
  const stages = 1 + pastFailure.addedPerStage * manner.stagesPastFailure;
  return stages * Math.exp(logHours / fitted.exponent);
}
