import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, InputOf } from '../fields/Field.ts';
import { liftField } from '../shared/liftField.ts';
import { setColumns } from '../shared/setColumns.ts';
import { unitField } from '../shared/unitField.ts';

/** The form, with three rowing sets of the boathouse filled in. */
export const fields = {
  sets: {
    kind: 'rows',
    label: 'Sets done on this lift',
    help: 'One is enough. Those near failure and of few reps tell the most.',
    columns: {
      ...setColumns,
      load: {
        ...setColumns.load,
        help: 'All that moves. With the body: what is on the belt, or the help.',
        minKg: 0,
      },
      bodyWeight: {
        kind: 'load',
        label: 'body weight then',
        help: 'Of that day.',
        minKg: 20,
        maxKg: 300,
        step: { kg: 0.5, lb: 1 },
        default: { value: 78, unit: 'kg' },
        when: (texts) => texts.lifted !== 'weight',
      },
    },
    rowName: 'Set',
    minRows: 1,
    maxRows: 12,
    layout: 'card',
    default: [row(60, 8, 'failure', 3), row(50, 12, '2', 3), row(55, 10, 'failure', 10)],
  },
  lifted: {
    kind: 'choice',
    label: 'What is lifted',
    help: 'Chin-ups and dips lift the body: its weight belongs to every set.',
    options: [
      { id: 'weight', label: 'A weight' },
      { id: 'belt', label: 'Body and belt' },
      { id: 'help', label: 'Body less help' },
    ],
    default: 'weight',
  },
  lift: liftField,
  show: unitField,
} as const satisfies Fields;

function row(value: number, reps: number, ended: 'failure' | '2', daysAgo: number) {
  const load = { value, unit: 'kg' } as const;
  const bodyWeight = { value: 78, unit: 'kg' } as const;
  return { load, reps, tempo: '2-0-1-0', ended, daysAgo, bodyWeight };
}

export type StrengthInput = InputOf<typeof fields>;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Known', fields: ['sets'] },
  { legend: 'Lift', fields: ['lifted', 'lift', 'show'] },
];
