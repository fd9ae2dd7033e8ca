import { bad, good, type Outcome } from '../basis/index.ts';
import { decimalMark } from './decimalMark.ts';
import type { LoadValue, Unit } from './Load.ts';
import { readDecimal } from './readDecimal.ts';
import { stepsOfDecimal } from './stepsOfDecimal.ts';
import { unitOfWord } from './unitOfWord.ts';

/** More than any load needs, and so few that no text takes long to read. */
const MOST_CHARACTERS = 100;

/** How {@link parseLoad} reads what is not written. */
export interface ParseLoadOptions {
  /** The unit of a number that comes without one. */
  readonly unit: Unit;
  /** BCP 47 tag whose decimal mark is trusted even where three digits follow it. */
  readonly locale?: string;
}

/**
 * Reads a load as people write it: `62.5`, `62,5 kg`, `135lbs`, `45#`, `−20 kilos`.
 *
 * Decimal comma and point are both understood, units in any case, signs including the typographic
 * minus, a leading ≈ as {@link formatLoad} writes it. Marks between thousands are never guessed:
 * `1,234` is a problem that says how to write either meaning, unless `locale` says that the mark
 * used is its decimal mark. The value keeps the unit it was given in.
 *
 * Problems: `load.empty`, `load.not-a-load`, `load.unknown-unit`, `load.ambiguous-mark`,
 * `load.thousands-mark`, `load.too-fine` (kilograms take 11 decimals, pounds 3) and
 * `load.out-of-range` (-45 t to 45 t).
 *
 * @throws RangeError for a locale tag that is malformed.
 * @example
 * ```ts
 * import { parseLoad } from '@windlass/core/load';
 * parseLoad('62,5', { unit: 'kg' }); // { ok: true, value: { value: 62.5, unit: 'kg' } }
 * parseLoad('135 LBS', { unit: 'kg' }); // { ok: true, value: { value: 135, unit: 'lb' } }
 * parseLoad('1,234', { unit: 'kg' }).ok; // false
 * parseLoad('1.234', { unit: 'kg', locale: 'en' }); // { ok: true, value: { value: 1.234, unit: 'kg' } }
 * ```
 */
export function parseLoad(text: string, options: ParseLoadOptions): Outcome<LoadValue> {
  if (text.length > MOST_CHARACTERS) {
    const message = `Write a load in at most ${MOST_CHARACTERS} characters, for example 62.5 kg.`;
    return problem('not-a-load', message, text);
  }
  const [, sign = '', digits = '', word = ''] =
    /^\s*[≈~]?\s*([+\-−–]?)\s*([\d.,'’\s]*)(.*?)\s*$/su.exec(text) ?? [];
  if (sign + digits.trim() + word === '') {
    return problem('empty', 'Write a load, for example 62.5 kg or 135 lb.', text);
  }
  if (digits.trim() === '') {
    return problem('not-a-load', 'Start with a number, for example 62.5 kg or 135 lb.', text);
  }
  const unit = word === '' ? options.unit : unitOfWord(word);
  if (unit === undefined) {
    return problem('unknown-unit', `Write kg or lb after the number, not "${word}".`, text, {
      word,
    });
  }
  const mark = options.locale === undefined ? undefined : decimalMark(options.locale);
  const decimal = readDecimal(digits.trim(), mark);
  if (!decimal.ok) return decimal;
  const isNegative = sign !== '' && sign !== '+';
  const steps = stepsOfDecimal(decimal.value, unit);
  if (steps.kind === 'too-fine') {
    const decimals = unit === 'kg' ? 11 : 3;
    return problem('too-fine', `Use at most ${decimals} decimals for a load in ${unit}.`, text, {
      decimals,
      unit,
    });
  }
  if (steps.kind === 'out-of-range') {
    const largest = unit === 'kg' ? 45_000 : 99_208;
    return problem('out-of-range', `Use a load from -${largest} to ${largest} ${unit}.`, text, {
      largest,
      unit,
    });
  }
  const size = Number(decimal.value);
  return good({ value: isNegative && size !== 0 ? -size : size, unit });
}

function problem(
  name: string,
  message: string,
  received: string,
  params: Readonly<Record<string, string | number>> = {},
) {
  return bad({ code: `load.${name}`, path: [], message, params, received });
}
