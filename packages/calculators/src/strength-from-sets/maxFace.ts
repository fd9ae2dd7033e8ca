import type { Band } from '@windlass/core/basis';
import { toKg } from '@windlass/core/load';
import { oneRepMaxKg, type StrengthPosterior } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';

/** How the one-rep max is given back. */
export interface MaxFace {
  /** All that moves, what is on the belt, or the help that one repetition needs. */
  readonly as: 'all' | 'belt' | 'help';
  /** The likely value; where the sets bind one side alone, the end that they bind. */
  readonly end: MaxEnd;
  /** That value, in the unit asked for. */
  readonly value: number;
  /** In the unit asked for. */
  readonly band: Band;
}

type MaxEnd = 'likely' | 'low' | 'high';

/**
 * Level of the band whose end is named. A floor of 99 in 100 lies where published equations put it;
 * a ceiling cannot be surer than 19 in 20, because one set in twenty is taken as noted wrongly.
 */
export const LEVELS = { likely: 0.8, low: 0.98, high: 0.9 } as const satisfies Readonly<
  Record<MaxEnd, number>
>;

/** Which value of the belief the sets themselves stand for. */
export function boundEnd({ binding }: StrengthPosterior): MaxEnd {
  if (binding === 'floor-only') return 'low';
  return binding === 'ceiling-only' ? 'high' : 'likely';
}

/** The one-rep max as it was written: the load alone, or the body taken off it again. */
export function maxFace({ show }: StrengthInput, { max, body, belief }: StrengthResult): MaxFace {
  const weight = body === null ? 0 : toKg(body);
  const written = (kg: number) => inUnit(kg - weight, show);
  const end = boundEnd(belief);
  const value = written(oneRepMaxKg(belief, LEVELS[end])[end]);
  const [low, likely, high] = [written(max.low), written(max.likely), written(max.high)];
  const { level } = max;
  if (body === null || value >= 0) {
    return { as: body === null ? 'all' : 'belt', end, value, band: { low, likely, high, level } };
  }
  return {
    as: 'help',
    end,
    value: -value,
    band: { low: -high, likely: -likely, high: -low, level },
  };
}
