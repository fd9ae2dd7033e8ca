import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, InputOf } from '../fields/Field.ts';
import { unitField } from '../shared/unitField.ts';

/** The form, with a row to failure of the boathouse filled in. */
export const fields = {
  load: {
    kind: 'load',
    label: 'Load of the set',
    help: 'Everything that moves: bar and plates, or body and belt together.',
    minKg: 0.5,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 60, unit: 'kg' },
  },
  reps: {
    kind: 'number',
    label: 'Reps to failure',
    help: 'The last one that was finished. A set that stopped earlier says less than any equation takes from it.',
    unit: 'reps',
    min: 1,
    max: 50,
    step: 1,
    default: 8,
  },
  lift: {
    kind: 'choice',
    label: 'Lift',
    help: 'Some equations were made for one lift alone; they are added for theirs.',
    options: [
      { id: 'any', label: 'Another lift' },
      { id: 'bench-press', label: 'Bench press' },
      { id: 'leg-press', label: 'Leg press' },
      { id: 'knee-extension', label: 'Leg extension' },
      { id: 'squat', label: 'Squat' },
      { id: 'deadlift', label: 'Deadlift' },
    ],
    default: 'any',
  },
  tempo: {
    kind: 'tempo',
    label: 'Tempo, if known',
    help: 'May stay empty. No equation asks for it; the band of Windlass does.',
    optional: true,
    default: null,
  },
  show: unitField,
} as const satisfies Fields;

export type EquationsInput = InputOf<typeof fields>;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Set', fields: ['load', 'reps', 'lift'] },
  { legend: 'More', fields: ['tempo', 'show'] },
];
