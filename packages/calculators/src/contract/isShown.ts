import type { Field, Texts } from '../fields/Field.ts';

/** Whether a field is part of the form with these texts. */
export function isShown(field: Field, texts: Texts): boolean {
  return field.when?.(texts) ?? true;
}
