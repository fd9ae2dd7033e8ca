import type { LoadValue, Unit } from '@windlass/core/load';
import type { Tempo } from '@windlass/core/tempo';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { pairLifts } from '../precomputed/pairLifts.ts';
import { exerciseField } from '../shared/exerciseFields.ts';
import { unitField } from '../shared/unitField.ts';
import type { LimitId, TargetId } from './targets.ts';

const reps = { kind: 'number', unit: 'reps', min: 1, max: 50, step: 1 } as const;
const tempoHelp = 'Lowering, pause, lift, pause, in seconds. X is a lift as fast as possible.';
const didEarlier = ({ earlier }: Readonly<Record<string, string>>) => earlier === 'yes';

/** The form, with a pair on the cable column of the boathouse filled in. */
export const fields = {
  isolation: exerciseField(
    {
      label: 'First, the isolation exercise',
      help: 'A few letters find it.',
      default: 'straight-arm-cable-pulldown',
    },
    pairLifts.filter(({ span }) => span === 'isolation'),
  ),
  isolationReps: {
    ...reps,
    label: 'Reps of it',
    help: 'Whole ones.',
    default: 10,
  },
  repsLeft: {
    kind: 'number',
    label: 'Reps left at its end',
    help: '0 is to failure.',
    unit: 'reps',
    min: 0,
    max: 10,
    step: 1,
    default: 0,
  },
  isolationTempo: {
    kind: 'tempo',
    label: 'Its tempo',
    help: tempoHelp,
    default: '3-0-2-0',
  },
  compound: exerciseField(
    {
      label: 'Then, the compound lift',
      help: 'A few letters find it.',
      default: 'cable-pulldown',
    },
    pairLifts.filter(({ span }) => span === 'compound'),
  ),
  usualLoad: {
    kind: 'load',
    label: 'Load that usually fails',
    help: 'Without the isolation set before it.',
    minKg: 1,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 55, unit: 'kg' },
  },
  usualReps: {
    ...reps,
    label: 'After so many reps',
    help: 'At the tempo below, fresh.',
    default: 9,
  },
  compoundTempo: {
    kind: 'tempo',
    label: 'Its tempo',
    help: tempoHelp,
    default: '3-0-2-0',
  },
  between: {
    kind: 'number',
    label: 'From the one to the other',
    help: 'Last rep to first rep. Ten seconds are the aim.',
    unit: 's',
    min: 0,
    max: 600,
    step: 5,
    default: 10,
  },
  ask: {
    kind: 'choice',
    label: 'Wanted',
    help: 'Less load for the same reps, or fewer reps with the same load.',
    options: [
      { id: 'load', label: 'The load' },
      { id: 'reps', label: 'The reps' },
    ],
    default: 'load',
  },
  rounds: {
    kind: 'number',
    label: 'Times the pair is done',
    help: 'Each round begins where the rest has left the muscles.',
    unit: '',
    min: 1,
    max: 6,
    step: 1,
    default: 3,
  },
  rest: {
    kind: 'number',
    label: 'Rest between rounds',
    help: 'From the last rep to the next isolation set.',
    unit: 's',
    min: 30,
    max: 900,
    step: 30,
    default: 180,
  },
  target: {
    kind: 'choice',
    label: 'The pair is for',
    help: 'What should end the compound set.',
    options: [
      { id: 'isolation', label: 'What the isolation exercise works' },
      { id: 'lats', label: 'Lats' },
      { id: 'upper-back', label: 'Upper back' },
      { id: 'chest', label: 'Chest' },
      { id: 'shoulders', label: 'Shoulders' },
      { id: 'upper-arm-front', label: 'Front of the upper arm' },
      { id: 'triceps', label: 'Triceps' },
      { id: 'glutes', label: 'Glutes' },
      { id: 'thigh-front', label: 'Front of the thigh' },
      { id: 'hamstrings', label: 'Hamstrings' },
    ],
    default: 'isolation',
  },
  limit: {
    kind: 'choice',
    label: 'Gives out before it',
    help: 'A helper known to end the compound set too soon.',
    options: [
      { id: 'unknown', label: 'Not known' },
      { id: 'triceps', label: 'Triceps' },
      { id: 'elbow-flexors', label: 'Front of the upper arm' },
      { id: 'grip', label: 'Grip' },
      { id: 'low-back', label: 'Low back' },
      { id: 'front-of-shoulder', label: 'Front of the shoulder' },
    ],
    default: 'unknown',
  },
  earlier: {
    kind: 'choice',
    label: 'Sets of something else before',
    help: 'What they have tired can end the pair.',
    options: [
      { id: 'no', label: 'None' },
      { id: 'yes', label: 'Some' },
    ],
    default: 'no',
  },
  earlierExercise: {
    ...exerciseField(
      { label: 'Of what', help: 'A few letters find it.', default: 'dumbbell-curl' },
      pairLifts,
    ),
    when: didEarlier,
  },
  earlierSets: {
    kind: 'number',
    label: 'Sets to failure',
    help: 'Two minutes of rest between them.',
    unit: '',
    min: 1,
    max: 10,
    step: 1,
    default: 3,
    when: didEarlier,
  },
  earlierReps: {
    ...reps,
    label: 'Reps of the first',
    help: 'The others follow from it.',
    default: 10,
    when: didEarlier,
  },
  earlierMinutes: {
    kind: 'number',
    label: 'Ended so long ago',
    help: 'Rest since then.',
    unit: 'min',
    min: 0,
    max: 120,
    step: 1,
    default: 3,
    when: didEarlier,
  },
  show: unitField,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Isolation', fields: ['isolation', 'isolationReps', 'repsLeft', 'isolationTempo'] },
  { legend: 'Compound', fields: ['compound', 'usualLoad', 'usualReps', 'compoundTempo'] },
  { legend: 'Pair', fields: ['between', 'ask', 'rounds', 'rest', 'show'] },
  {
    legend: 'What it is for, and what was done before',
    fields: [
      'target',
      'limit',
      'earlier',
      'earlierExercise',
      'earlierSets',
      'earlierReps',
      'earlierMinutes',
    ],
    folded: true,
  },
];

/** The values of the form. */
export interface PairInputs {
  readonly isolation: string;
  readonly isolationReps: number;
  readonly repsLeft: number;
  readonly isolationTempo: Tempo;
  readonly compound: string;
  readonly usualLoad: LoadValue;
  readonly usualReps: number;
  readonly compoundTempo: Tempo;
  readonly between: number;
  readonly ask: 'load' | 'reps';
  readonly rounds: number;
  readonly rest: number;
  readonly target: TargetId;
  readonly limit: LimitId;
  readonly earlier: 'no' | 'yes';
  readonly earlierExercise: string;
  readonly earlierSets: number;
  readonly earlierReps: number;
  readonly earlierMinutes: number;
  readonly show: Unit;
}
