import {
  type ImportedLog,
  importLog,
  type LogField,
  type LoggedSet,
  type LogMapping,
} from '@windlass/core/progress';
import { reviewLifts } from '../precomputed/reviewLifts.ts';
import { lastCall } from './lastCall.ts';
import { type HeldColumns, NEEDED } from './logColumns.ts';
import type { LogInput } from './logFields.ts';
import { tableOf } from './tableOf.ts';

/** What was read, and which columns are missing before anything can be. */
export interface ReadLog extends ImportedLog {
  readonly missing: readonly LogField[];
}

/** What a log is read by, besides its text. */
type Reading = Pick<
  LogInput,
  'columns' | 'head' | 'unit' | 'dateOrder' | 'years' | 'mark' | 'names'
>;

/** The pasted log, by what its columns hold; nothing is guessed, and no row is lost. */
export function readLog(input: LogInput): ReadLog {
  const { columns, head, unit, dateOrder, years, mark, names } = input;
  const reading: Reading = { columns, head, unit, dateOrder, years, mark, names };
  return readOnce(input.log ?? '', JSON.stringify(reading));
}

const readOnce = lastCall((log: string, settings: string): ReadLog => {
  const reading = JSON.parse(settings) as Reading;
  const { held, isOwn, preview } = tableOf(log, reading.columns ?? '');
  const missing = NEEDED.filter((field) => !held.includes(field));
  if (missing.length > 0) return { sets: [], unread: [], missing };
  const { head, unit, dateOrder, years, mark, names } = reading;
  const mapping: LogMapping = {
    columns: columnsOf(held),
    separator: preview.separator,
    hasHeader: head === 'yes',
    unit,
    ...(dateOrder === 'unsaid' ? {} : { dateOrder }),
    ...(years === '2000' ? { shortYearsFrom: 2000 } : {}),
    ...(isOwn ? { decimalMark: '.' } : mark === 'unsaid' ? {} : { decimalMark: MARKS[mark] }),
  };
  const { sets, unread } = importLog(log, mapping);
  return { sets: renamed(sets, names), unread, missing };
});

const MARKS = { comma: ',', point: '.' } as const;

function columnsOf(held: HeldColumns): LogMapping['columns'] {
  const columns: Partial<Record<LogField, number>> = {};
  held.forEach((field, column) => {
    if (field !== '') columns[field] = column;
  });
  const { date = 0, exercise = 0, load = 0, reps = 0, ...others } = columns;
  return { ...others, date, exercise, load, reps };
}

/** Names that the library or the form knows, in any case of letters, as ids; others as they are. */
function renamed(sets: readonly LoggedSet[], names: Reading['names']): readonly LoggedSet[] {
  const ids = new Map([
    ...reviewLifts.map(({ id, name }) => [name.toLowerCase(), id] as const),
    ...names.map(({ written, exercise }) => [written.trim().toLowerCase(), exercise] as const),
  ]);
  return sets.map((set) => {
    const id = ids.get(set.exercise.toLowerCase());
    return id === undefined ? set : { ...set, exercise: id };
  });
}
