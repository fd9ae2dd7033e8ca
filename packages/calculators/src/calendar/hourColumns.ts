import type { Columns } from '../fields/Field.ts';
import { words } from '../words.ts';

const from = { kind: 'time', label: 'from', help: 'Opening.', default: '18:30' } as const;
const to = { kind: 'time', label: 'to', help: 'Closing.', default: '20:00' } as const;

const shift = {
  kind: 'choice',
  label: 'kind of day',
  help: 'By the shift worked.',
  options: [
    { id: 'day', label: 'day shift' },
    { id: 'night', label: 'night shift' },
    { id: 'off', label: 'off' },
  ],
  default: 'off',
} as const;

/** Hours of a weekday; Monday is 0. */
export const weekColumns = {
  day: {
    kind: 'choice',
    label: 'day',
    help: 'Of the week.',
    options: words.dates.weekdays.map((label, place) => ({ id: String(place), label })),
    default: '0',
  },
  from,
  to,
} as const satisfies Columns;

/** A run of days of one kind. */
export const rotaColumns = {
  shift,
  days: {
    kind: 'number',
    label: 'days on end',
    help: 'Of this kind.',
    unit: '',
    min: 1,
    max: 14,
    step: 1,
    default: 2,
  },
} as const satisfies Columns;

/** Hours of a kind of day. */
export const shiftColumns = { shift, from, to } as const satisfies Columns;
