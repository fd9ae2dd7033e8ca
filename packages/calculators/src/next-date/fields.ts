import type { MuscleId } from '@windlass/core/anatomy';
import type { Soreness, TrainingStatus } from '@windlass/core/recovery';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { muscleNames } from '../precomputed/pairLifts.ts';
import { trainedLifts } from '../precomputed/trainedLifts.ts';
import { dateRange } from '../shared/dateRange.ts';
import { exerciseField } from '../shared/exerciseFields.ts';
import { statusField } from '../shared/statusField.ts';
import { zoneField } from '../shared/zoneField.ts';
import type { EndId, FamiliarId } from './workOf.ts';

const exercise = (help: string, preset: string) =>
  exerciseField({ label: 'exercise', help, default: preset }, trainedLifts);

/** The form, with a rowing evening of the boathouse filled in. */
export const fields = {
  work: {
    kind: 'rows',
    label: 'What was done',
    help: 'Work sets only. A stage past failure is a hold, lowerings, help, or a lighter load.',
    columns: {
      exercise: exercise('A few letters find it.', 'cable-row'),
      sets: {
        kind: 'number',
        label: 'sets',
        help: 'Of this exercise.',
        unit: '',
        min: 1,
        max: 20,
        step: 1,
        default: 3,
      },
      end: {
        kind: 'choice',
        label: 'they ended',
        help: 'Most of them.',
        options: [
          { id: '4', label: 'with 4 or more left' },
          { id: '3', label: 'with 3 left' },
          { id: '2', label: 'with 2 left' },
          { id: '1', label: 'with 1 left' },
          { id: '0', label: 'at failure' },
          { id: 'past1', label: 'failure + 1 stage' },
          { id: 'past2', label: 'failure + 2 stages' },
          { id: 'past3', label: 'failure + 3 stages' },
        ],
        default: '0',
      },
      lowering: {
        kind: 'choice',
        label: 'as',
        help: 'Heavy lowering: near or above what can be lifted.',
        options: [
          { id: 'lifted', label: 'usual sets' },
          { id: 'heavy', label: 'heavy lowering' },
        ],
        default: 'lifted',
      },
      familiar: {
        kind: 'choice',
        label: 'such work is',
        help: 'In the last months.',
        options: [
          { id: 'used', label: 'familiar' },
          { id: 'once', label: 'done once before' },
          { id: 'first', label: 'new' },
        ],
        default: 'used',
      },
    },
    rowName: 'Lift',
    minRows: 1,
    maxRows: 12,
    layout: 'card',
    default: [
      { exercise: 'cable-row', sets: 3, end: '0', lowering: 'lifted', familiar: 'used' },
      { exercise: 'cable-pulldown', sets: 1, end: 'past2', lowering: 'lifted', familiar: 'used' },
      { exercise: 'dumbbell-curl', sets: 2, end: '1', lowering: 'lifted', familiar: 'used' },
    ],
  },
  on: {
    kind: 'date',
    label: 'On',
    help: 'The day it began.',
    ...dateRange,
    default: '2026-03-03',
  },
  at: { kind: 'time', label: 'From', help: 'When it began.', default: '18:30' },
  zone: zoneField,
  status: statusField,
  next: {
    kind: 'rows',
    label: 'What the next session trains',
    help: 'Without any: the same muscles again.',
    columns: { exercise: exercise('A few letters find it.', 'chin-up') },
    rowName: 'Next lift',
    minRows: 0,
    maxRows: 12,
    layout: 'card',
    default: [{ exercise: 'chin-up' }, { exercise: 'dumbbell-split-squat' }],
  },
  plannedOn: {
    kind: 'date',
    label: 'Planned for',
    help: 'May stay empty.',
    optional: true,
    ...dateRange,
    default: '2026-03-05',
  },
  plannedAt: { kind: 'time', label: 'At', help: 'When it would begin.', default: '18:30' },
  shortNights: {
    kind: 'number',
    label: 'Short nights since then',
    help: '6 hours of sleep or less.',
    unit: '',
    min: 0,
    max: 14,
    step: 1,
    default: 1,
  },
  sore: {
    kind: 'rows',
    label: 'Soreness',
    help: 'As it is felt now.',
    columns: {
      muscle: {
        kind: 'choice',
        label: 'muscle',
        help: 'A few letters find it.',
        options: Object.entries(muscleNames).map(([id, label]) => ({ id, label })),
        default: 'biceps',
      },
      soreness: {
        kind: 'choice',
        label: 'sore',
        help: 'Severe hinders everyday movement.',
        options: [
          { id: 'slight', label: 'slightly' },
          { id: 'clear', label: 'clearly' },
          { id: 'severe', label: 'severely' },
        ],
        default: 'clear',
      },
    },
    rowName: 'Sore muscle',
    minRows: 0,
    maxRows: 12,
    layout: 'card',
    default: [],
  },
  before: {
    kind: 'rows',
    label: 'How the next session went after earlier ones like this',
    help: 'The first hard set then, against what was forecast for it when rested.',
    columns: {
      hours: {
        kind: 'number',
        label: 'hours later',
        help: 'From start to start.',
        unit: 'h',
        min: 1,
        max: 336,
        step: 1,
        default: 48,
      },
      reps: {
        kind: 'number',
        label: 'reps done',
        help: 'Whole ones.',
        unit: '',
        min: 0,
        max: 100,
        step: 1,
        default: 8,
      },
      forecast: {
        kind: 'number',
        label: 'reps forecast',
        help: 'For a rested muscle.',
        unit: '',
        min: 1,
        max: 100,
        step: 1,
        default: 9,
      },
    },
    rowName: 'Earlier time',
    minRows: 0,
    maxRows: 12,
    layout: 'card',
    default: [],
  },
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Session', fields: ['work', 'on', 'at', 'zone', 'status'] },
  { legend: 'Next session', fields: ['next', 'plannedOn', 'plannedAt'] },
  {
    legend: 'Reports: sleep, soreness, how it went before',
    fields: ['shortNights', 'sore', 'before'],
    folded: true,
  },
];

/** The values of the form. */
export interface NextDateInput {
  readonly work: readonly WorkRow[];
  readonly on: string;
  readonly at: string;
  readonly zone: string;
  readonly status: TrainingStatus;
  readonly next: readonly { readonly exercise: string }[];
  readonly plannedOn: string | null;
  readonly plannedAt: string;
  readonly shortNights: number;
  readonly sore: readonly { readonly muscle: string; readonly soreness: Soreness }[];
  readonly before: readonly {
    readonly hours: number;
    readonly reps: number;
    readonly forecast: number;
  }[];
}

/** One exercise of the session. */
export interface WorkRow {
  readonly exercise: string;
  readonly sets: number;
  readonly end: EndId;
  readonly lowering: 'lifted' | 'heavy';
  readonly familiar: FamiliarId;
}

/** A muscle that the choice has let through. */
export function muscleOf(id: string): MuscleId {
  return id as MuscleId;
}
