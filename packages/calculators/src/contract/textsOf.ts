import type { Texts } from '../fields/Field.ts';
import { fieldText } from '../fields/fieldText.ts';
import type { Calculator } from './Calculator.ts';

/** The texts of an input as the JSON Schema describes it, ready for `answer` and for an address. */
export function textsOf(calculator: Calculator, input: Readonly<Record<string, unknown>>): Texts {
  return Object.fromEntries(
    Object.entries(calculator.fields).map(([name, field]) => [
      name,
      fieldText(field, name in input ? input[name] : field.default),
    ]),
  );
}
