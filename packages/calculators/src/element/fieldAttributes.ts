import type { Calculator } from '../contract/Calculator.ts';

/** An attribute that sets a field. */
export interface FieldAttribute {
  readonly field: string;
  readonly attribute: string;
}

/** Attributes that mean something else, whatever fields a calculator has. */
const RESERVED = new Set(['calculator', 'query', 'tools']);

/**
 * The attributes among these that set a field of a calculator. HTML knows no capitals: the field
 * `stackPlates` is set by `stack-plates` or `stackplates`. `units` is another name for `show`, the
 * unit of the answer.
 */
export function fieldAttributes(
  { fields }: Pick<Calculator, 'fields'>,
  names: readonly string[],
): readonly FieldAttribute[] {
  const plain = (name: string) => name.replaceAll('-', '').toLowerCase();
  const byName = new Map(Object.keys(fields).map((field) => [plain(field), field]));
  if (fields.show) byName.set('units', 'show');
  return names.flatMap((attribute) => {
    const field = RESERVED.has(attribute) ? undefined : byName.get(plain(attribute));
    return field === undefined ? [] : { field, attribute };
  });
}
