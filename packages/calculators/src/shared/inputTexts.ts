import { formatTempo, type Tempo } from '@windlass/core/tempo';
import type { Fields, InputOf } from '../fields/Field.ts';
import { fieldText } from '../fields/fieldText.ts';

/** The texts of values that differ from the defaults, as an address carries them. */
export function inputTexts<F extends Fields>(
  fields: F,
  input: InputOf<F>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => {
      const value: unknown = input[name];
      const isTempo = field.kind === 'tempo' && value !== null;
      const text = isTempo ? formatTempo(value as Tempo) : fieldText(field, value);
      return text === fieldText(field, field.default) ? [] : [[name, text]];
    }),
  );
}
