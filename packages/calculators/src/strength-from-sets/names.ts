import { toKg } from '@windlass/core/load';
import type { PerformedSet } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { StrengthInput } from './fields.ts';
import { said } from './words.ts';

/** Kilograms in the unit asked for, as fine as the figure deserves. */
export function kgWords(kg: number, { show }: Pick<StrengthInput, 'show'>, decimals = 0): string {
  return `${formatNumber(inUnit(kg, show), decimals)}\u00a0${show}`;
}

/** `60 kg × 8`, with all that moved. */
export function setName({ load, reps }: PerformedSet, input: StrengthInput): string {
  return said.set(kgWords(toKg(load), input, 1), reps);
}

/** How a set ended and when. */
export function aboutSet({ end, day }: PerformedSet): string {
  const ended = end.kind === 'reserve' ? said.ended.reserve(end.repsLeft) : said.ended[end.kind];
  return said.about(ended, said.daysAgo(day === 0 ? 0 : -day));
}
