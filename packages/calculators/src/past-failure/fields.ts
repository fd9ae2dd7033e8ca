import type { LoadValue } from '@windlass/core/load';
import type { Tempo } from '@windlass/core/tempo';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { chainLifts } from '../precomputed/chainLifts.ts';
import { exerciseField } from '../shared/exerciseFields.ts';
import { type HealthInput, healthFields, healthGroup } from '../shared/healthFields.ts';
import { stopsField } from '../shared/stopsField.ts';
import { type StageInput, stageFields, usedBy } from './stageFields.ts';

/** Lifts whose load stays on a lifter who fails alone, unless something catches it. */
const leavesTheLoad = chainLifts
  .filter(({ atFailureAlone }) => atFailureAlone === 'needs-stops')
  .map(({ id }) => id);

/** The form, with a belted chin-up of the boathouse filled in. */
export const fields = {
  exercise: exerciseField(
    { label: 'Exercise', help: 'A few letters find it.', default: 'chin-up' },
    chainLifts,
  ),
  load: {
    kind: 'load',
    label: 'Load',
    help: 'Everything that moves: the own body counts where it is lifted.',
    minKg: 1,
    maxKg: 600,
    step: { kg: 2.5, lb: 5 },
    default: { value: 82.5, unit: 'kg' },
  },
  heaviness: {
    kind: 'choice',
    label: 'How heavy that is, told by',
    help: 'The most that can be lifted once, or the load’s share of it.',
    options: [
      { id: 'max', label: 'The one-rep max' },
      { id: 'share', label: 'A share of it' },
    ],
    default: 'max',
  },
  max: {
    kind: 'load',
    label: 'One-rep max',
    help: 'Counted like the load, on a day like today.',
    minKg: 1,
    maxKg: 800,
    step: { kg: 2.5, lb: 5 },
    default: { value: 105, unit: 'kg' },
    when: ({ heaviness }) => heaviness !== 'share',
  },
  share: {
    kind: 'number',
    label: 'Share of the one-rep max',
    help: 'Known to within about four hundredths at best.',
    unit: '%',
    min: 20,
    max: 110,
    step: 1,
    default: 78,
    when: ({ heaviness }) => heaviness === 'share',
  },
  tempo: {
    kind: 'tempo',
    label: 'At this tempo',
    help: 'Lowering, pause, lift, pause, in seconds. X is a lift as fast as possible.',
    default: '4-0-2-0',
  },
  ...stageFields,
  company: {
    kind: 'choice',
    label: 'Who is there',
    help: 'A partner knows the lift and has agreed to help. A stranger nearby is none.',
    options: [
      { id: 'partner', label: 'A partner' },
      { id: 'alone', label: 'Nobody' },
    ],
    default: 'alone',
  },
  stops: {
    ...stopsField,
    when: ({ exercise }) => leavesTheLoad.includes(exercise ?? ''),
  },
  before: {
    kind: 'choice',
    label: 'Hard lowerings in the last six months',
    help: 'The first ones cost far more than later ones.',
    options: [
      { id: 'accustomed', label: 'Yes' },
      { id: 'first-time', label: 'No' },
    ],
    default: 'first-time',
    when: usedBy('lower'),
  },
  switchedOn: {
    kind: 'choice',
    label: 'Off by default for this lifter',
    help: 'A coach may switch such things on; what is refused stays refused.',
    options: [
      { id: 'no', label: 'Stays off' },
      { id: 'yes', label: 'Switched on' },
    ],
    default: 'no',
  },
  ...healthFields,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Set', fields: ['exercise', 'load', 'heaviness', 'max', 'share', 'tempo'] },
  {
    legend: 'After lifting fails',
    fields: [
      'stage1',
      'stage2',
      'stage3',
      'stage4',
      'stage5',
      'stage6',
      'holdSeconds',
      'lowerings',
      'lowerSeconds',
      'partReps',
      'lighterPercent',
      'pauseSeconds',
      'helpReps',
    ],
  },
  { legend: 'There', fields: ['company', 'stops', 'before'] },
  { ...healthGroup, fields: [...healthGroup.fields, 'switchedOn'] },
];

/** The values of the form. */
export interface ChainInput extends StageInput, HealthInput {
  readonly exercise: string;
  readonly load: LoadValue;
  readonly heaviness: 'max' | 'share';
  readonly max: LoadValue;
  readonly share: number;
  readonly tempo: Tempo;
  readonly company: 'partner' | 'alone';
  readonly stops: 'yes' | 'no';
  readonly before: 'accustomed' | 'first-time';
  readonly switchedOn: 'yes' | 'no';
}
