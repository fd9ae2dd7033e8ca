import type { PieceStock } from '@windlass/core/equipment';
import type { LoadValue, Unit } from '@windlass/core/load';
import type { FieldGroup } from '../contract/Definition.ts';
import type { CountWindow, Fields, Texts } from '../fields/Field.ts';
import type { BarInput } from '../shared/barFields.ts';
import { dateRange } from '../shared/dateRange.ts';
import { type GearInput, gearFields, gearStock } from '../shared/gearFields.ts';
import { unitField } from '../shared/unitField.ts';
import { LiftControl } from './LiftControl.tsx';
import { type LogInput, logFields } from './logFields.ts';

const gearIs =
  (...kinds: readonly string[]) =>
  ({ gear = '' }: Texts) =>
    gear === 'log' || kinds.includes(gear);

/** The form: the log, and what the next session is to be. */
export const fields = {
  ...logFields,
  lift: {
    kind: 'text',
    label: 'Lift',
    help: 'The one trained last where none is chosen.',
    optional: true,
    maxLength: 120,
    control: LiftControl,
    default: null,
  },
  on: {
    kind: 'date',
    label: 'Next session on',
    help: 'Sets after that day are passed over.',
    ...dateRange,
    default: '2026-03-03',
  },
  window: {
    kind: 'window',
    label: 'Window',
    help: 'Repetitions that every top set is to have.',
    unit: 'reps',
    min: 1,
    max: 50,
    default: { low: 8, high: 10 },
  },
  reserve: {
    kind: 'number',
    label: 'Reps left on purpose',
    help: '0 where sets go to failure.',
    unit: 'reps',
    min: 0,
    max: 10,
    step: 1,
    default: 0,
  },
  pain: {
    kind: 'choice',
    label: 'Pain since the last session',
    help: 'Sharp, one-sided or growing, or swelling. Not plain soreness.',
    options: [
      { id: 'no', label: 'None' },
      { id: 'yes', label: 'Yes' },
    ],
    default: 'no',
  },
  show: unitField,
  ...gearFields,
  gear: {
    ...gearFields.gear,
    options: [
      { id: 'log', label: 'As logged' },
      { id: 'bar', label: 'Bar' },
      { id: 'dumbbells', label: 'Dumbbells' },
      { id: 'stack', label: 'Stack' },
      { id: 'body', label: 'Body and belt' },
    ],
    default: 'log',
  },
  bar: { ...gearFields.bar, when: gearIs('bar') },
  barWeight: {
    ...gearFields.barWeight,
    when: (texts) => gearIs('bar')(texts) && texts.bar === 'other',
  },
  collar: { ...gearFields.collar, when: gearIs('bar') },
  plates: { ...gearFields.plates, when: gearIs('bar', 'body') },
  dumbbells: { ...gearFields.dumbbells, when: gearIs('dumbbells') },
  stackFirst: { ...gearFields.stackFirst, when: gearIs('stack') },
  stackStep: { ...gearFields.stackStep, when: gearIs('stack') },
  stackPlates: { ...gearFields.stackPlates, when: gearIs('stack') },
  pulley: { ...gearFields.pulley, when: gearIs('stack') },
  addOn: { ...gearFields.addOn, when: gearIs('stack') },
  bodyWeight: {
    kind: 'load',
    label: 'Body weight',
    help: 'For sets with the body that were logged without it.',
    optional: true,
    minKg: 20,
    maxKg: 300,
    step: { kg: 0.5, lb: 1 },
    default: null,
    when: gearIs('body'),
  },
  helpStep: {
    kind: 'load',
    label: 'Help, each step of the machine',
    help: 'Empty where nothing helps.',
    optional: true,
    minKg: 0.5,
    maxKg: 25,
    step: { kg: 1, lb: 2.5 },
    default: null,
    when: gearIs('body'),
  },
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Log', fields: ['entry', 'log', 'rows'] },
  {
    legend: 'How the log is read',
    fields: ['columns', 'unit', 'dateOrder', 'years', 'mark', 'head', 'names'],
    folded: true,
  },
  { legend: 'Next session', fields: ['lift', 'on', 'window', 'reserve', 'pain', 'gear', 'show'] },
  {
    legend: 'What this gym has, and the body',
    fields: ['bar', 'barWeight', ...gearStock, 'bodyWeight', 'helpStep'],
    folded: true,
  },
];

/** The values of the form. */
export interface LogReviewInput extends LogInput, BarInput, Omit<GearInput, 'gear'> {
  readonly lift: string | null;
  readonly on: string;
  readonly window: CountWindow;
  readonly reserve: number;
  readonly pain: 'no' | 'yes';
  readonly show: Unit;
  readonly gear: 'log' | GearInput['gear'] | 'body';
  readonly dumbbells: readonly PieceStock[];
  readonly bodyWeight: LoadValue | null;
  readonly helpStep: LoadValue | null;
}
