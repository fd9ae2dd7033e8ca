import type { Counts } from '@windlass/core/equipment';
import type { LoadValue, Unit } from '@windlass/core/load';
import type { DateOrder } from '@windlass/core/progress';
import type { Tempo } from '@windlass/core/tempo';
import type { Fields, Texts } from '../fields/Field.ts';
import { boathouseLog } from '../precomputed/boathouseLog.ts';
import { reviewLifts } from '../precomputed/reviewLifts.ts';
import { dateRange } from '../shared/dateRange.ts';
import { exerciseField } from '../shared/exerciseFields.ts';
import { setColumns } from '../shared/setColumns.ts';
import { ColumnsControl } from './ColumnsControl.tsx';
import { LogControl } from './LogControl.tsx';
import { IN_ADDRESS } from './logSizes.ts';

const pasted = { when: ({ entry }: Texts) => entry === 'paste' };

/** The log and how it is read, with eight weeks of one of the boathouse crew filled in. */
export const logFields = {
  entry: {
    kind: 'choice',
    label: 'The log is',
    help: 'A table of separated values (CSV), or sets by hand.',
    options: [
      { id: 'paste', label: 'Pasted or a file' },
      { id: 'rows', label: 'Typed in' },
    ],
    default: 'paste',
  },
  log: {
    kind: 'text',
    label: 'Log',
    help: 'One row a set. It stays on this device.',
    optional: true,
    maxLength: 4_000_000,
    inAddressUpTo: IN_ADDRESS,
    control: LogControl,
    isGroup: true,
    default: boathouseLog,
    ...pasted,
  },
  columns: {
    kind: 'text',
    label: 'What each column holds',
    help: 'Names are not interpreted: look at the cells, then say what they are.',
    optional: true,
    maxLength: 1000,
    control: ColumnsControl,
    isGroup: true,
    default: null,
    ...pasted,
  },
  unit: {
    kind: 'choice',
    label: 'A load without a unit is in',
    help: 'A unit in the cell, or in a column of its own, counts first.',
    options: [
      { id: 'kg', label: 'kg' },
      { id: 'lb', label: 'lb' },
    ],
    default: 'kg',
    ...pasted,
  },
  dateOrder: {
    kind: 'choice',
    label: 'Dates such as 02.03.2026',
    help: '2026-03-02 needs no answer.',
    options: [
      { id: 'unsaid', label: 'Not said' },
      { id: 'day-first', label: 'Day first' },
      { id: 'month-first', label: 'Month first' },
      { id: 'year-first', label: 'Year first' },
    ],
    default: 'unsaid',
    ...pasted,
  },
  years: {
    kind: 'choice',
    label: 'Years of two digits',
    help: '26 as the year 2026.',
    options: [
      { id: 'unsaid', label: 'Not read' },
      { id: '2000', label: 'From 2000 on' },
    ],
    default: 'unsaid',
    ...pasted,
  },
  mark: {
    kind: 'choice',
    label: 'In 1,234 the comma is',
    help: 'Only such cells need it; 102,5 and 102.5 are plain.',
    options: [
      { id: 'unsaid', label: 'Not said' },
      { id: 'comma', label: 'A decimal mark' },
      { id: 'point', label: 'For thousands' },
    ],
    default: 'unsaid',
    ...pasted,
  },
  head: {
    kind: 'choice',
    label: 'The first row',
    help: 'Names of columns, or a set already.',
    options: [
      { id: 'yes', label: 'Names the columns' },
      { id: 'no', label: 'Is a set' },
    ],
    default: 'yes',
    ...pasted,
  },
  names: {
    kind: 'rows',
    label: 'Own names of exercises',
    help: 'Names of the library are known; others are reviewed, and their muscles not counted.',
    columns: {
      written: {
        kind: 'text',
        label: 'written as',
        help: 'As it stands in the log.',
        maxLength: 80,
        default: 'row',
      },
      exercise: exerciseField(
        { label: 'is', help: 'A few letters find it.', default: 'cable-row' },
        reviewLifts,
      ),
    },
    rowName: 'Name',
    minRows: 0,
    maxRows: 40,
    layout: 'card',
    default: [],
    ...pasted,
  },
  rows: {
    kind: 'rows',
    label: 'Sets',
    help: 'In any order.',
    columns: {
      on: { kind: 'date', label: 'on', help: 'Its day.', ...dateRange, default: '2026-02-27' },
      exercise: exerciseField(
        { label: 'exercise', help: 'A few letters find it.', default: 'cable-row' },
        reviewLifts,
      ),
      load: { ...setColumns.load, minKg: 0 },
      counts: {
        kind: 'choice',
        label: 'it counts',
        help: 'What the number is.',
        options: [
          { id: 'total', label: 'all together' },
          { id: 'each-hand', label: 'each hand' },
          { id: 'stack', label: 'stack number' },
          { id: 'added', label: 'on the body' },
        ],
        default: 'total',
      },
      reps: setColumns.reps,
      ended: setColumns.ended,
      tempo: setColumns.tempo,
    },
    rowName: 'Set',
    minRows: 1,
    maxRows: 60,
    layout: 'card',
    default: [
      rowOf('2026-02-20', 40, 10),
      rowOf('2026-02-24', 42.5, 9),
      rowOf('2026-02-27', 42.5, 10),
    ],
    when: ({ entry }) => entry === 'rows',
  },
} as const satisfies Fields;

function rowOf(on: string, value: number, reps: number) {
  return {
    on,
    exercise: 'cable-row',
    load: { value, unit: 'kg' },
    counts: 'stack',
    reps,
    ended: 'failure',
    tempo: '2-0-1-0',
  } as const;
}

/** One set typed in. */
export interface TypedSet {
  readonly on: string;
  readonly exercise: string;
  readonly load: LoadValue;
  readonly counts: Exclude<Counts, 'plates'>;
  readonly reps: number;
  readonly ended: 'failure' | '1' | '2' | '3' | '4' | 'more';
  readonly tempo: Tempo | null;
}

/** The values of these fields. */
export interface LogInput {
  readonly entry: 'paste' | 'rows';
  readonly log: string | null;
  readonly columns: string | null;
  readonly unit: Unit;
  readonly dateOrder: 'unsaid' | DateOrder;
  readonly years: 'unsaid' | '2000';
  readonly mark: 'unsaid' | 'comma' | 'point';
  readonly head: 'yes' | 'no';
  readonly names: readonly { readonly written: string; readonly exercise: string }[];
  readonly rows: readonly TypedSet[];
}
