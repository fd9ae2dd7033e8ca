import type { Band } from '@windlass/core/basis';
import { toKg } from '@windlass/core/load';
import { inUnit } from '../shared/inUnit.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';

/** How the one-rep max is given back. */
export interface MaxFace {
  /** All that moves, what is on the belt, or the help that one repetition needs. */
  readonly as: 'all' | 'belt' | 'help';
  /** In the unit asked for. */
  readonly band: Band;
}

/** The one-rep max as it was written: the load alone, or the body taken off it again. */
export function maxFace({ show }: StrengthInput, { max, body }: StrengthResult): MaxFace {
  const unit = (kg: number) => inUnit(kg, show);
  const { low, likely, high, level } = max;
  if (body === null) {
    return { as: 'all', band: { low: unit(low), likely: unit(likely), high: unit(high), level } };
  }
  const weight = toKg(body);
  const [least, middle, most] = [low, likely, high].map((kg) => unit(kg - weight)) as [
    number,
    number,
    number,
  ];
  if (middle >= 0) return { as: 'belt', band: { low: least, likely: middle, high: most, level } };
  return { as: 'help', band: { low: -most, likely: -middle, high: -least, level } };
}
