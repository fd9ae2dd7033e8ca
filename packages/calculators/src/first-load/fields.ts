import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, InputOf } from '../fields/Field.ts';
import { gearFields } from '../shared/gearFields.ts';
import { liftField } from '../shared/liftField.ts';
import { setColumns } from '../shared/setColumns.ts';
import { unitField } from '../shared/unitField.ts';

/** The form: no set done yet, the pulldown of the boathouse. */
export const fields = {
  window: {
    kind: 'window',
    label: 'Fail within',
    help: 'Where the work sets shall end, once the load is found.',
    unit: 'reps',
    min: 1,
    max: 50,
    default: { low: 10, high: 12 },
  },
  tempo: {
    kind: 'tempo',
    label: 'At this tempo',
    help: 'Lowering, pause, lift, pause, in seconds. X is a lift as fast as possible.',
    default: '3-0-2-0',
  },
  tries: {
    kind: 'rows',
    label: 'Trial sets so far',
    help: 'None at first. Add each one after it is done; four at most, with a rest between.',
    columns: {
      load: { ...setColumns.load, default: { value: 5, unit: 'kg' } },
      reps: { ...setColumns.reps, help: 'Whole repetitions in good form.', default: 8 },
      felt: {
        kind: 'choice',
        label: 'it felt',
        help: 'As the lifter judged it.',
        options: [
          { id: 'far-too-easy', label: 'far too easy' },
          { id: '10', label: 'about 10 left' },
          { id: '5', label: 'about 5 left' },
          { id: '3', label: '3 left' },
          { id: '2', label: '2 left' },
          { id: '1', label: '1 left' },
          { id: 'failed', label: 'the next one failed' },
          { id: 'form-broke', label: 'form broke' },
        ],
        default: 'far-too-easy',
      },
    },
    rowName: 'Trial set',
    minRows: 0,
    maxRows: 4,
    layout: 'card',
    default: [],
  },
  lift: liftField,
  ...gearFields,
  gear: { ...gearFields.gear, default: 'stack' },
  show: unitField,
} as const satisfies Fields;

export type FirstLoadInput = InputOf<typeof fields>;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Done', fields: ['tries'] },
  { legend: 'Wanted', fields: ['window', 'tempo', 'lift'] },
  { legend: 'Equipment', fields: ['gear', 'bar', 'barWeight', 'pulley', 'show'] },
  {
    legend: 'What this gym has of it',
    fields: ['plates', 'collar', 'dumbbells', 'stackFirst', 'stackStep', 'stackPlates', 'addOn'],
    folded: true,
  },
];
