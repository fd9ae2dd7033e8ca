import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';

/** The form of the tempo calculator, with a slow leg press of the boathouse filled in. */
export const fields = {
  tempo: {
    kind: 'tempo',
    label: 'Tempo',
    help: 'Four numbers of seconds, such as 4-1-2-0. X is a lift as fast as possible.',
    orderFrom: 'order',
    default: '4-1-2-0',
  },
  order: {
    kind: 'choice',
    label: 'Written first',
    help: 'Both orders are in use and look the same on paper. Ask whoever wrote it.',
    options: [
      { id: 'lower-first', label: 'Lowering' },
      { id: 'lift-first', label: 'Lift' },
    ],
    default: 'lower-first',
  },
  reps: {
    kind: 'number',
    label: 'Repetitions',
    help: 'In one set.',
    unit: 'reps',
    min: 1,
    max: 100,
    step: 1,
    default: 8,
  },
  starts: {
    kind: 'choice',
    label: 'A rep begins with',
    help: 'A squat begins with the lowering; a row, pulldown or chin-up with the lift.',
    options: [
      { id: 'lower', label: 'Lowering' },
      { id: 'lift', label: 'Lift' },
    ],
    default: 'lower',
  },
  lastPause: {
    kind: 'choice',
    label: 'The last pause',
    help: 'After the last rep the set may count as over, or run until the pause has ended.',
    options: [
      { id: 'counted', label: 'Counts' },
      { id: 'left-out', label: 'Is left out' },
    ],
    default: 'counted',
  },
  relief: {
    kind: 'choice',
    label: 'Pauses that rest the muscle',
    help: 'Locked knees after a squat, or a bar set down, carry no load for the muscle.',
    options: [
      { id: 'none', label: 'None' },
      { id: 'pause-after-lower', label: 'Low' },
      { id: 'pause-after-lift', label: 'High' },
      { id: 'both', label: 'Both' },
    ],
    default: 'none',
  },
  fastLift: {
    kind: 'number',
    label: 'X counts for',
    help: 'Only used where the lift is written X.',
    unit: 's',
    min: 0.2,
    max: 1,
    step: 0.1,
    default: 1,
  },
  goal: {
    kind: 'window',
    label: 'Time goal for a set',
    help: 'Which counts keep the set inside this span is told below.',
    unit: 's',
    min: 1,
    max: 600,
    default: { low: 40, high: 60 },
  },
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Set', fields: ['tempo', 'order', 'reps'] },
  { legend: 'How it is counted', fields: ['starts', 'lastPause', 'relief', 'fastLift', 'goal'] },
];
