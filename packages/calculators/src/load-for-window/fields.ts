import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { gearFields, gearStock } from '../shared/gearFields.ts';
import { setColumns } from '../shared/setColumns.ts';
import { unitField } from '../shared/unitField.ts';

/** The form, with two rowing sets of the boathouse filled in. */
export const fields = {
  window: {
    kind: 'window',
    label: 'Fail within',
    help: 'The repetition that cannot be finished shall fall in here.',
    unit: 'reps',
    min: 1,
    max: 50,
    default: { low: 6, high: 8 },
  },
  tempo: {
    kind: 'tempo',
    label: 'At this tempo',
    help: 'Lowering, pause, lift, pause, in seconds. X is a lift as fast as possible.',
    default: '4-0-2-0',
  },
  sets: {
    kind: 'rows',
    label: 'Sets done on this lift',
    help: 'One is enough. The nearer to failure and to the window, the more they tell.',
    columns: setColumns,
    rowName: 'Set',
    minRows: 1,
    maxRows: 12,
    layout: 'card',
    default: [
      { load: { value: 50, unit: 'kg' }, reps: 12, tempo: '2-0-1-0', ended: '2', daysAgo: 4 },
      {
        load: { value: 57.5, unit: 'kg' },
        reps: 8,
        tempo: '2-0-1-0',
        ended: 'failure',
        daysAgo: 4,
      },
    ],
  },
  ...gearFields,
  company: {
    kind: 'choice',
    label: 'Who is there',
    help: 'Sets to failure ask for a way out of the lift.',
    options: [
      { id: 'partner', label: 'A partner' },
      { id: 'alone', label: 'Nobody' },
    ],
    default: 'partner',
  },
  show: unitField,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Wanted', fields: ['window', 'tempo'] },
  { legend: 'Known', fields: ['sets'] },
  { legend: 'Equipment', fields: ['gear', 'bar', 'barWeight', 'company', 'show'] },
  {
    legend: 'What this gym has of it',
    fields: [...gearStock],
    folded: true,
  },
];
