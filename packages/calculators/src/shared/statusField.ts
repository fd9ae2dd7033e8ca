import type { ChoiceField } from '../fields/Field.ts';

/** How long somebody has been lifting. */
export const statusField = {
  kind: 'choice',
  label: 'Training',
  help: 'Used to it: a year or more, regularly. New: the first weeks.',
  options: [
    { id: 'new', label: 'New' },
    { id: 'recreational', label: 'Some' },
    { id: 'trained', label: 'Used to it' },
  ],
  default: 'recreational',
} as const satisfies ChoiceField;
