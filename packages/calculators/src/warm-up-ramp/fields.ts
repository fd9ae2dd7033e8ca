import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { gearFields, gearStock } from '../shared/gearFields.ts';
import { unitField } from '../shared/unitField.ts';

/** The form, with a split squat of the boathouse filled in. */
export const fields = {
  work: {
    kind: 'load',
    label: 'Work load',
    help: 'Bar and plates together; one dumbbell; the number at the pin.',
    minKg: 1,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 82.5, unit: 'kg' },
  },
  possible: {
    kind: 'number',
    label: 'Reps possible with it, all out',
    help: 'Tells how near it is to the most that can be lifted once.',
    unit: 'reps',
    min: 1,
    max: 40,
    step: 1,
    default: 8,
  },
  ...gearFields,
  starts: {
    kind: 'choice',
    label: 'The bar starts',
    help: 'From the floor every step needs a full-size plate on each side.',
    options: [
      { id: 'rack', label: 'On hooks' },
      { id: 'floor', label: 'On the floor' },
    ],
    default: 'rack',
    when: (texts) => texts.gear === 'bar',
  },
  warm: {
    kind: 'choice',
    label: 'These muscles today',
    help: 'Muscles that have worked need fewer steps, or none.',
    options: [
      { id: 'fresh', label: 'Not yet' },
      { id: 'partly', label: 'Partly' },
      { id: 'worked', label: 'Worked' },
    ],
    default: 'fresh',
  },
  technical: {
    kind: 'choice',
    label: 'A lift that needs practice',
    help: 'A technical lift gets its own ramp, however warm the muscles are.',
    options: [
      { id: 'no', label: 'No' },
      { id: 'yes', label: 'Yes' },
    ],
    default: 'no',
  },
  experience: {
    kind: 'choice',
    label: 'The lifter',
    help: 'In the first months no step comes very near to the work load.',
    options: [
      { id: 'trained', label: 'Trained' },
      { id: 'new', label: 'New to it' },
    ],
    default: 'trained',
  },
  above: {
    kind: 'choice',
    label: 'One rep above the work load',
    help: 'Off by default. No gain for sets to failure is known.',
    options: [
      { id: 'off', label: 'Off' },
      { id: 'stops', label: 'With stops or a partner' },
      { id: 'no-stops', label: 'With neither' },
    ],
    default: 'off',
  },
  show: unitField,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Work set', fields: ['work', 'possible'] },
  { legend: 'Equipment', fields: ['gear', 'bar', 'barWeight', 'starts', 'show'] },
  {
    legend: 'What this gym has of it',
    fields: [...gearStock],
    folded: true,
  },
  { legend: 'Lifter', fields: ['warm', 'technical', 'experience', 'above'] },
];
