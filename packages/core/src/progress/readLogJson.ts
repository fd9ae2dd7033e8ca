import { bad, type Problem } from '../basis/index.ts';
import type { ImportedLog, LoggedSet, UnreadRow } from './LoggedSet.ts';
import type { LogField } from './LogMapping.ts';
import { readLogRow } from './readLogRow.ts';
import { plainDecimal } from './table/plainDecimal.ts';

/**
 * Reads a log from JSON of our own format, as `writeLogJson` writes it.
 *
 * Each set is checked as a row of a table is; one that does not hold is given back with its number
 * in the list, its text and what would be right.
 *
 * @returns for text that is no JSON, or another format or version, one entry under `unread`.
 * @example
 * ```ts
 * import { readLogJson } from '@windlass/core/progress';
 * readLogJson('{"format":"windlass-log","version":1,"sets":[{}]}').unread[0]?.line; // 1
 * readLogJson('[]').unread[0]?.problems[0]?.code; // 'progress.not-a-log-file'
 * ```
 */
export function readLogJson(text: string): ImportedLog {
  const file = parsed(text);
  if (!isRecord(file) || file.format !== 'windlass-log' || file.version !== 1) return notALog(text);
  if (!Array.isArray(file.sets)) return notALog(text);
  const sets: LoggedSet[] = [];
  const unread: UnreadRow[] = [];
  for (const [index, entry] of file.sets.entries()) {
    const outcome = readEntry(entry);
    const set = outcome.ok ? outcome.value[0] : undefined;
    if (set?.set === undefined) {
      const problems = outcome.ok ? [NO_NUMBER] : outcome.problems;
      unread.push({ line: index + 1, text: JSON.stringify(entry), problems });
    } else {
      sets.push({ ...set, set: set.set });
    }
  }
  return { sets, unread };
}

const MAPPING = {
  columns: { date: 0, exercise: 0, load: 0, reps: 0 },
  unit: 'kg',
  decimalMark: '.',
} as const;

const NO_NUMBER: Problem = {
  code: 'progress.no-set-number',
  path: ['set'],
  message: 'Give the number of the set within its exercise and date, from 1.',
};

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function notALog(text: string): ImportedLog {
  const problem: Problem = {
    code: 'progress.not-a-log-file',
    path: [],
    message: 'Give JSON with "format": "windlass-log", "version": 1 and a list of "sets".',
  };
  return { sets: [], unread: [{ line: 1, text: text.slice(0, 200), problems: [problem] }] };
}

function readEntry(entry: unknown): ReturnType<typeof readLogRow> {
  const fields = isRecord(entry) ? entry : {};
  const misfit = misfitOf(fields);
  return misfit ? bad(misfit) : readLogRow(cellsOf(fields), MAPPING);
}

/** The first field that holds an object or a list where a text or a number stands. */
function misfitOf(entry: Readonly<Record<string, unknown>>): Problem | undefined {
  const { load, bodyWeight, end, tags, ...plain } = entry;
  const parts = { ...plain, ...partsOf({ load, bodyWeight, end, tags }) };
  const [field] = Object.entries(parts).find(([, value]) => isObject(value)) ?? [];
  if (field === undefined) return undefined;
  return {
    code: 'progress.not-a-text',
    path: [field],
    message: `Give ${field} as a text or a number, not as an object or a list.`,
    params: { field },
  };
}

/** The parts of fields that may be objects or lists; a list of objects is found by its field's name. */
function partsOf(fields: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(fields).map(([name, value]) => [
      name,
      isObject(value) ? Object.values(value).find(isObject) : value,
    ]),
  );
}

/** A set's fields as cells, so that files of both kinds are held to the same rules. */
function cellsOf(entry: Readonly<Record<string, unknown>>): Partial<Record<LogField, string>> {
  const load = isRecord(entry.load) ? entry.load : {};
  const body = isRecord(entry.bodyWeight) ? entry.bodyWeight : undefined;
  const end = isRecord(entry.end) ? entry.end : {};
  const tags = Array.isArray(entry.tags) ? entry.tags.join(' ') : '';
  return {
    date: text(entry.date),
    exercise: text(entry.exercise),
    set: text(entry.set),
    side: text(entry.side),
    load: decimal(load.value),
    unit: text(load.unit),
    counts: text(entry.counts),
    hands: text(entry.hands),
    body: body === undefined ? '' : `${decimal(body.value)} ${text(body.unit)}`,
    reps: text(entry.reps),
    ended: text(end.kind),
    reserve: text(end.repsLeft ?? end.atLeast),
    tempo: text(entry.tempo),
    rest: text(entry.restSeconds),
    tags,
    equipment: text(entry.equipment),
    note: entry.note === undefined || entry.note === null ? '' : String(entry.note),
  };
}

function decimal(value: unknown): string {
  return typeof value === 'number' ? plainDecimal(value) : text(value);
}

function text(value: unknown): string {
  return value === undefined || value === null ? '' : String(value).trim();
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return isObject(value) && !Array.isArray(value);
}
