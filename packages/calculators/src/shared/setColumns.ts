import type { Columns } from '../fields/Field.ts';

/** What is asked of a set that was done. */
export const setColumns = {
  load: {
    kind: 'load',
    label: 'load',
    help: 'Bar and plates together; one dumbbell; the number at the pin.',
    minKg: 0.5,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 50, unit: 'kg' },
  },
  reps: {
    kind: 'number',
    label: 'reps',
    help: 'Whole repetitions.',
    unit: '',
    min: 0,
    max: 100,
    step: 1,
    default: 10,
  },
  tempo: {
    kind: 'tempo',
    label: 'tempo, if known',
    help: 'Empty if nobody knows.',
    optional: true,
    default: '2-0-1-0',
  },
  ended: {
    kind: 'choice',
    label: 'it ended',
    help: 'As the lifter judged it.',
    options: [
      { id: 'failure', label: 'at failure' },
      { id: '1', label: 'with 1 left' },
      { id: '2', label: 'with 2 left' },
      { id: '3', label: 'with 3 left' },
      { id: '4', label: 'with 4 left' },
      { id: 'more', label: 'at the target' },
    ],
    default: 'failure',
  },
  daysAgo: {
    kind: 'number',
    label: 'days ago',
    help: '0 is today.',
    unit: '',
    min: 0,
    max: 730,
    step: 1,
    default: 4,
  },
} as const satisfies Columns;
