import { attributeOf, type Calculator, type Field } from '@windlass/calculators';

/** An attribute of the custom element, as the table of a calculator shows it. */
export interface ShownAttribute {
  readonly name: string;
  readonly sets: string;
  readonly takes: string;
  readonly standard: string;
}

/** Longer lists name some and say how many there are. */
const MOST_NAMED = 8;

/** Every attribute that sets a field of a calculator, in the order of its form. */
export function attributesOf({ fields, defaults }: Calculator): readonly ShownAttribute[] {
  return Object.entries(fields).map(([name, field]) => ({
    name: name === 'show' ? 'units' : attributeOf(name),
    sets: field.label,
    takes: takenBy(field),
    standard: defaults[name] ?? '',
  }));
}

function takenBy(field: Field): string {
  const range = (low: number, high: number, unit: string) =>
    `${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;
  switch (field.kind) {
    case 'number':
      return range(field.min, field.max, field.unit);
    case 'load':
      return `a load with its unit, ${range(field.minKg, field.maxKg, 'kg')}`;
    case 'window':
      return `two counts with a hyphen, ${range(field.min, field.max, field.unit)}`;
    case 'choice':
      return namesOf(field.options);
    case 'many':
      return `any of ${namesOf(field.options)}, with commas between`;
    case 'tempo':
      return 'a tempo, lowering first';
    case 'text':
      return `up to ${field.maxLength} characters`;
    case 'date':
      return `a date, ${field.min} to ${field.max}`;
    case 'time':
      return 'a time, 00:00 to 23:59';
    case 'rows':
      return `up to ${field.maxRows} rows of ${Object.keys(field.columns).join('_')}, a tilde between rows`;
  }
}

function namesOf(options: readonly { readonly id: string }[]): string {
  const named = options.slice(0, MOST_NAMED).map(({ id }) => id);
  const more = options.length - named.length;
  return more === 0 ? named.join(', ') : `${named.join(', ')} and ${more} more`;
}
