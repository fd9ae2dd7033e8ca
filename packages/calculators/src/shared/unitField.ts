import type { ChoiceField } from '../fields/Field.ts';

/** The unit in which an answer is given; the last choice is remembered. */
export const unitField = {
  kind: 'choice',
  label: 'Answer in',
  help: 'Inputs keep the unit they are written in.',
  options: [
    { id: 'kg', label: 'kg' },
    { id: 'lb', label: 'lb' },
  ],
  default: 'kg',
  remember: 'unit',
} as const satisfies ChoiceField;
