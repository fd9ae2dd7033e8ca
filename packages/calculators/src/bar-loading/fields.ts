import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { barFields } from '../shared/barFields.ts';
import { unitField } from '../shared/unitField.ts';

/** The form of the bar calculator, with the boathouse bar and plates filled in. */
export const fields = {
  target: {
    kind: 'load',
    label: 'Load wanted',
    help: 'Bar, collars and plates together. The steps follow your smallest pair of plates.',
    minKg: 0.5,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 82.5, unit: 'kg' },
  },
  take: {
    kind: 'choice',
    label: 'If it lies between two',
    help: 'Half way counts as nearest to the lighter one.',
    options: [
      { id: 'nearest', label: 'Nearest' },
      { id: 'at-most', label: 'Lighter' },
      { id: 'at-least', label: 'Heavier' },
    ],
    default: 'nearest',
  },
  ...barFields,
  before: {
    kind: 'load',
    label: 'On the bar now',
    help: 'May stay empty. Then the way from one loading to the next is told.',
    optional: true,
    minKg: 0,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: null,
  },
  show: unitField,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Load', fields: ['target', 'take', 'bar', 'barWeight'] },
  { legend: 'The plates of this gym', fields: ['plates', 'collar'], folded: true },
  { legend: 'The change', fields: ['before', 'show'] },
];
