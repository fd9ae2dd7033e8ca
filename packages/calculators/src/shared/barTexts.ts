import { fieldText, loadText } from '../fields/fieldText.ts';
import { type BarInput, barFields } from './barFields.ts';

/** Bar and plates as texts, for a link to another calculator that has the same fields. */
export function barTexts(input: BarInput): Readonly<Record<string, string>> {
  return {
    bar: input.bar,
    ...(input.bar === 'other' ? { barWeight: loadText(input.barWeight) } : {}),
    ...(input.collar.value > 0 ? { collar: loadText(input.collar) } : {}),
    plates: fieldText(barFields.plates, input.plates),
  };
}
