import type { TrainingStatus } from '@windlass/core/recovery';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, Texts } from '../fields/Field.ts';
import type { SessionKindId } from '../precomputed/sessionKinds.ts';
import { dateRange } from '../shared/dateRange.ts';
import { statusField } from '../shared/statusField.ts';
import { zoneField } from '../shared/zoneField.ts';
import { rotaColumns, shiftColumns, weekColumns } from './hourColumns.ts';
import { said } from './words.ts';

const byWeek = { when: ({ pattern }: Texts) => pattern === 'week' };
const byRota = { when: ({ pattern }: Texts) => pattern === 'rota' };

const session = {
  kind: 'number',
  label: 'session',
  help: 'Its number in the list of sessions.',
  unit: '',
  min: 1,
  max: 6,
  step: 1,
  default: 1,
} as const;
const on = { kind: 'date', label: 'on', help: 'Its day.', ...dateRange } as const;
const at = { kind: 'time', label: 'at', help: 'When it begins.', default: '18:30' } as const;

/** The form, with the crew of the boathouse filled in. */
export const fields = {
  sessions: {
    kind: 'rows',
    label: 'Sessions, in turn',
    help: 'Each comes once in every round.',
    columns: {
      trains: {
        kind: 'choice',
        label: 'trains',
        help: 'Other exercises for the same muscles ask for the same hours.',
        options: (Object.keys(said.kinds) as SessionKindId[]).map((id) => ({
          id,
          label: said.kinds[id],
        })),
        default: 'whole',
      },
      sets: {
        kind: 'number',
        label: 'sets each',
        help: 'Work sets of every exercise.',
        unit: '',
        min: 1,
        max: 6,
        step: 1,
        default: 2,
      },
      end: {
        kind: 'choice',
        label: 'they end',
        help: 'Most of them.',
        options: [
          { id: '3', label: 'with 3 left' },
          { id: '2', label: 'with 2 left' },
          { id: '1', label: 'with 1 left' },
          { id: '0', label: 'at failure' },
          { id: 'past', label: 'past failure' },
        ],
        default: '1',
      },
      minutes: {
        kind: 'number',
        label: 'minutes',
        help: 'From start to end.',
        unit: '',
        min: 10,
        max: 240,
        step: 5,
        default: 60,
      },
      place: {
        kind: 'choice',
        label: 'where',
        help: 'Own gym: not on days away.',
        options: [
          { id: 'any', label: 'anywhere' },
          { id: 'own', label: 'own gym' },
        ],
        default: 'any',
      },
    },
    rowName: 'Session',
    minRows: 1,
    maxRows: 6,
    layout: 'card',
    default: [
      { trains: 'pull', sets: 2, end: '0', minutes: 60, place: 'any' },
      { trains: 'legs', sets: 2, end: '1', minutes: 75, place: 'own' },
      { trains: 'whole', sets: 1, end: '1', minutes: 45, place: 'any' },
    ],
  },
  perWeek: {
    kind: 'number',
    label: 'Sessions a week',
    help: 'At most. Empty: as many as fit.',
    optional: true,
    unit: '',
    min: 1,
    max: 7,
    step: 1,
    default: 3,
  },
  order: {
    kind: 'choice',
    label: 'Order',
    help: 'Any order within a round leaves more days to choose from.',
    options: [
      { id: 'as-listed', label: 'As listed' },
      { id: 'any-in-round', label: 'Any in a round' },
    ],
    default: 'as-listed',
  },
  firstDay: {
    kind: 'date',
    label: 'First day',
    help: 'Of the plan.',
    ...dateRange,
    default: '2026-03-02',
  },
  weeks: {
    kind: 'number',
    label: 'Weeks',
    help: 'To plan.',
    unit: '',
    min: 1,
    max: 12,
    step: 1,
    default: 4,
  },
  zone: zoneField,
  pattern: {
    kind: 'choice',
    label: 'Hours to train repeat',
    help: 'A rota counts its own days, not weeks.',
    options: [
      { id: 'week', label: 'Every week' },
      { id: 'rota', label: 'With a shift rota' },
    ],
    default: 'week',
  },
  week: {
    kind: 'rows',
    label: 'Hours in the week',
    help: 'A closing time before the opening lies on the next day.',
    columns: weekColumns,
    rowName: 'Opening',
    minRows: 0,
    maxRows: 21,
    layout: 'card',
    default: [
      { day: '0', from: '18:30', to: '20:00' },
      { day: '1', from: '18:30', to: '20:00' },
      { day: '3', from: '18:30', to: '20:00' },
      { day: '5', from: '09:30', to: '11:30' },
    ],
    ...byWeek,
  },
  rota: {
    kind: 'rows',
    label: 'Rota, run by run',
    help: 'The whole cycle, then from its beginning again.',
    columns: rotaColumns,
    rowName: 'Run',
    minRows: 1,
    maxRows: 24,
    layout: 'card',
    default: [
      { shift: 'day', days: 2 },
      { shift: 'night', days: 2 },
      { shift: 'off', days: 4 },
    ],
    ...byRota,
  },
  rotaFrom: {
    kind: 'date',
    label: 'First day of a cycle',
    help: 'Any cycle; it runs on both ways.',
    ...dateRange,
    default: '2026-03-02',
    ...byRota,
  },
  shifts: {
    kind: 'rows',
    label: 'Hours by kind of day',
    help: 'A kind without hours has no time to train.',
    columns: shiftColumns,
    rowName: 'Opening',
    minRows: 0,
    maxRows: 9,
    layout: 'card',
    default: [
      { shift: 'day', from: '19:30', to: '20:45' },
      { shift: 'night', from: '13:00', to: '15:00' },
      { shift: 'off', from: '10:00', to: '12:00' },
    ],
    ...byRota,
  },
  dayShifts: {
    kind: 'choice',
    label: 'On day shifts',
    help: 'Light: half the sets, three left, two thirds of the time.',
    options: [
      { id: 'free', label: 'As any day' },
      { id: 'light', label: 'Light' },
      { id: 'one', label: 'Light, one a run' },
    ],
    default: 'one',
    ...byRota,
  },
  nightShifts: {
    kind: 'choice',
    label: 'On night shifts',
    help: 'Broken sleep is a reason to leave a day between.',
    options: [
      { id: 'free', label: 'As any day' },
      { id: 'apart', label: 'Not two days on end' },
    ],
    default: 'apart',
    ...byRota,
  },
  away: {
    kind: 'rows',
    label: 'Days away',
    help: 'They take the place of what the week or the rota says.',
    columns: {
      from: { ...on, label: 'from', help: 'First day.', default: '2026-03-17' },
      to: { ...on, label: 'to', help: 'Last day.', default: '2026-03-19' },
      gym: {
        kind: 'choice',
        label: 'there',
        help: 'What the place has.',
        options: [
          { id: 'none', label: 'no training' },
          { id: 'other', label: 'another gym' },
        ],
        default: 'none',
      },
      open: { ...at, label: 'gym from', help: 'For another gym.', default: '07:00' },
      close: { ...at, label: 'gym to', help: 'For another gym.', default: '08:30' },
    },
    rowName: 'Stay',
    minRows: 0,
    maxRows: 8,
    layout: 'card',
    default: [
      { from: '2026-03-17', to: '2026-03-19', gym: 'other', open: '07:00', close: '08:30' },
    ],
  },
  lightEvery: {
    kind: 'number',
    label: 'Every so many weeks a light one',
    help: 'Empty: none. With 4, the fourth, the eighth.',
    optional: true,
    unit: '',
    min: 2,
    max: 12,
    step: 1,
    default: 4,
  },
  past: {
    kind: 'rows',
    label: 'Sessions before the plan',
    help: 'What was missed comes next; the newest is what counts.',
    columns: {
      session,
      how: {
        kind: 'choice',
        label: 'was',
        help: 'Missed: not done at all.',
        options: [
          { id: 'done', label: 'done' },
          { id: 'missed', label: 'missed' },
        ],
        default: 'done',
      },
      on: { ...on, default: '2026-02-27' },
      at,
    },
    rowName: 'Past session',
    minRows: 0,
    maxRows: 12,
    layout: 'card',
    default: [],
  },
  fixed: {
    kind: 'rows',
    label: 'Sessions that stay where they are',
    help: 'The others are placed around them.',
    columns: { session, on: { ...on, default: '2026-03-10' }, at },
    rowName: 'Fixed session',
    minRows: 0,
    maxRows: 12,
    layout: 'card',
    default: [],
  },
  status: statusField,
  by: {
    kind: 'choice',
    label: 'Ready by',
    help: 'The time at which 1, 5 or 9 people in 10 are.',
    options: [
      { id: 'earliest', label: '1 in 10' },
      { id: 'likely', label: '5 in 10' },
      { id: 'cautious', label: '9 in 10' },
    ],
    default: 'likely',
  },
  name: {
    kind: 'text',
    label: 'Name of the plan',
    help: 'A file with the same name brings its sessions up to date and doubles none.',
    maxLength: 40,
    default: 'Boathouse crew',
  },
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Sessions', fields: ['sessions', 'perWeek', 'order'] },
  {
    legend: 'Hours',
    fields: [
      'firstDay',
      'weeks',
      'pattern',
      'week',
      'rota',
      'rotaFrom',
      'shifts',
      'dayShifts',
      'nightShifts',
      'zone',
    ],
  },
  {
    legend: 'Days away, light weeks, missed and fixed sessions',
    fields: ['away', 'lightEvery', 'past', 'fixed'],
    folded: true,
  },
  {
    legend: 'Who trains, and the name of the plan',
    fields: ['status', 'by', 'name'],
    folded: true,
  },
];

export type ShiftId = 'day' | 'night' | 'off';

interface Opening {
  readonly from: string;
  readonly to: string;
}

interface Dated {
  readonly session: number;
  readonly on: string;
  readonly at: string;
}

/** One session of the round. */
export interface SessionRow {
  readonly trains: SessionKindId;
  readonly sets: number;
  readonly end: '0' | '1' | '2' | '3' | 'past';
  readonly minutes: number;
  readonly place: 'any' | 'own';
}

/** The values of the form. */
export interface CalendarInput {
  readonly sessions: readonly SessionRow[];
  readonly perWeek: number | null;
  readonly order: 'as-listed' | 'any-in-round';
  readonly firstDay: string;
  readonly weeks: number;
  readonly zone: string;
  readonly pattern: 'week' | 'rota';
  readonly week: readonly (Opening & { readonly day: string })[];
  readonly rota: readonly { readonly shift: ShiftId; readonly days: number }[];
  readonly rotaFrom: string;
  readonly shifts: readonly (Opening & { readonly shift: ShiftId })[];
  readonly dayShifts: 'free' | 'light' | 'one';
  readonly nightShifts: 'free' | 'apart';
  readonly away: readonly (Opening & {
    readonly gym: 'none' | 'other';
    readonly open: string;
    readonly close: string;
  })[];
  readonly lightEvery: number | null;
  readonly past: readonly (Dated & { readonly how: 'done' | 'missed' })[];
  readonly fixed: readonly Dated[];
  readonly status: TrainingStatus;
  readonly by: 'earliest' | 'likely' | 'cautious';
  readonly name: string;
}
