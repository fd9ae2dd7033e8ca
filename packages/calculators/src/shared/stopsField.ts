import type { Field } from '../fields/Field.ts';

/** Whether something catches the load below its lowest point. */
export const stopsField = {
  kind: 'choice',
  label: 'Stops below the lowest point',
  help: 'Pins or a rack, set and tried with the empty bar.',
  options: [
    { id: 'yes', label: 'Set and tried' },
    { id: 'no', label: 'None' },
  ],
  default: 'no',
} as const satisfies Field;
