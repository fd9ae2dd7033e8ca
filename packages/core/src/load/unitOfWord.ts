import type { Unit } from './Load.ts';

const unitWords: Readonly<Record<string, Unit>> = {
  kg: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  lb: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  '#': 'lb',
};

/** The unit people mean by a word, in any case and with or without an abbreviation's full stop. */
export function unitOfWord(word: string): Unit | undefined {
  const key = word.toLowerCase().replace(/\.$/, '');
  return Object.hasOwn(unitWords, key) ? unitWords[key] : undefined;
}
