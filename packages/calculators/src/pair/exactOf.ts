import type { PairForecast } from '@windlass/core/pairing';
import { inUnit } from '../shared/inUnit.ts';
import type { PairInputs } from './fields.ts';

/** The unrounded answer to what is asked: load or repetitions. */
export function exactOf({ ask, show }: Pick<PairInputs, 'ask' | 'show'>, forecast: PairForecast) {
  return ask === 'load' ? inUnit(forecast.loadKg.likely, show) : forecast.repsAtUsualLoad.likely;
}
