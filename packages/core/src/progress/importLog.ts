import type { Problem } from '../basis/index.ts';
import type { ImportedLog, LoggedSet, UnreadRow } from './LoggedSet.ts';
import type { LogField, LogMapping } from './LogMapping.ts';
import { readLogRow } from './readLogRow.ts';
import { detectSeparator } from './table/detectSeparator.ts';
import { readTable } from './table/readTable.ts';
import type { TableRow } from './table/Table.ts';

/**
 * Reads a log from a table of separated values that somebody or something else wrote, by a mapping
 * of its columns (`previewImport` helps to make one).
 *
 * Byte-order mark, quotes, any line ends, decimal comma or point, kilograms and pounds row by row,
 * assistance, belts, pairs and sides are understood. Every row that cannot be read is given back
 * with its line, its text and what would be right; none is dropped, and nothing is guessed. Rows
 * without anything in them are no rows. Sets are numbered in the order of the file where no column
 * does it.
 *
 * @returns all sets in the order of the file, and all rows that were not read. A table without the
 * mapped columns gives one entry for its first line.
 * @example
 * ```ts
 * import { importLog } from '@windlass/core/progress';
 * const text = 'Day;Lift;Load;Reps\n02.03.2026;Row;102,5;5\n02.03.2026;Row;heavy;5';
 * const { sets, unread } = importLog(text, {
 *   columns: { date: 'Day', exercise: 'Lift', load: 'Load', reps: 'Reps' },
 *   unit: 'kg',
 *   dateOrder: 'day-first',
 * });
 * sets[0]?.load; // { value: 102.5, unit: 'kg' }
 * unread.map(({ line }) => line); // [3]
 * ```
 */
export function importLog(text: string, mapping: LogMapping): ImportedLog {
  const table = readTable(text, mapping.separator ?? detectSeparator(text) ?? ',');
  const header = mapping.hasHeader === false ? undefined : table.rows[0];
  const rows = header ? table.rows.slice(1) : table.rows;
  const columns = columnNumbers(mapping, header);
  const unread: UnreadRow[] = table.broken.map(({ line, text: row, reason }) => ({
    line,
    text: row,
    problems: [BROKEN[reason]],
  }));
  if (columns.missing.length > 0) {
    const { line, text: row } = header ?? { line: 1, text: '' };
    return { sets: [], unread: [{ line, text: row, problems: columns.missing }, ...unread] };
  }
  const sets: LoggedSet[] = [];
  const counted = new Map<string, number>();
  for (const row of rows) {
    if (row.cells.every((cell) => cell.trim() === '')) continue;
    const outcome = readRow(row, header?.cells.length, columns.numbers, mapping);
    if (!outcome.ok) {
      unread.push({ line: row.line, text: row.text, problems: outcome.problems });
      continue;
    }
    for (const one of outcome.value) {
      const key = `${one.date}|${one.exercise}|${one.side ?? ''}`;
      const set = one.set ?? (counted.get(key) ?? 0) + 1;
      counted.set(key, set);
      sets.push({ ...one, set });
    }
  }
  return { sets, unread: unread.sort((a, b) => a.line - b.line) };
}

const BROKEN: Readonly<Record<'quote-not-closed' | 'text-after-quote', Problem>> = {
  'quote-not-closed': {
    code: 'progress.quote-not-closed',
    path: [],
    message: 'Close the quote, or write a quote inside a cell twice.',
  },
  'text-after-quote': {
    code: 'progress.text-after-quote',
    path: [],
    message: 'After a closing quote the cell ends; write a quote inside a cell twice.',
  },
};

type ColumnNumbers = readonly (readonly [LogField, number])[];

function columnNumbers(
  mapping: LogMapping,
  header: TableRow | undefined,
): { readonly numbers: ColumnNumbers; readonly missing: readonly Problem[] } {
  const names = header?.cells.map((cell) => cell.trim()) ?? [];
  const numbers: [LogField, number][] = [];
  const missing: Problem[] = [];
  for (const [field, column] of Object.entries(mapping.columns) as [LogField, number | string][]) {
    const number = typeof column === 'number' ? column : names.indexOf(column);
    if (number >= 0 && (header === undefined || number < names.length)) {
      numbers.push([field, number]);
    } else {
      missing.push({
        code: 'progress.no-such-column',
        path: ['columns', field],
        message: `There is no column ${column}; the table has ${names.join(', ') || 'no header'}.`,
        params: { column },
        received: column,
      });
    }
  }
  return { numbers, missing };
}

function readRow(
  { cells, text }: TableRow,
  width: number | undefined,
  columns: ColumnNumbers,
  mapping: LogMapping,
): ReturnType<typeof readLogRow> {
  const extra = width === undefined ? [] : cells.slice(width);
  if (extra.some((cell) => cell.trim() !== '')) {
    const problem: Problem = {
      code: 'progress.too-many-cells',
      path: [],
      message: `This row has ${cells.length} cells and the header ${width}: quote a cell that holds a separator.`,
      params: { cells: cells.length, columns: width ?? 0 },
      received: text,
    };
    return { ok: false, problems: [problem] };
  }
  const read = columns.map(([field, number]) => {
    const cell = cells[number] ?? '';
    return [field, field === 'note' ? cell : cell.trim()] as const;
  });
  return readLogRow(Object.fromEntries(read), mapping);
}
