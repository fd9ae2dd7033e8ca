import { readDate } from './cells/readDate.ts';
import { readLoadCell } from './cells/readLoadCell.ts';
import { readRepsCell } from './cells/readRepsCell.ts';
import type { LogColumns } from './LogMapping.ts';
import { detectSeparator } from './table/detectSeparator.ts';
import { readTable } from './table/readTable.ts';
import type { BrokenRow, Separator, TableRow } from './table/Table.ts';

/** One column of a table as it was found. */
export interface ColumnPreview {
  /** From 0. */
  readonly column: number;
  readonly header: string;
  /** The first cells that are not empty, three at most. */
  readonly samples: readonly string[];
  /** What most of its cells could be; the person decides. */
  readonly looksLike: 'date' | 'load' | 'count' | 'text' | 'empty';
}

/** Something that the cells do not say and a person has to. */
export type ImportQuestion = 'date-order' | 'short-years' | 'unit' | 'columns';

/** What a table holds, before anything is imported. */
export interface ImportPreview {
  readonly separator: Separator;
  readonly rows: number;
  readonly columns: readonly ColumnPreview[];
  /** Rows whose quotes do not add up. */
  readonly broken: readonly BrokenRow[];
  /** The columns that a log needs, where their cells leave no doubt. */
  readonly suggestion: Partial<LogColumns>;
  readonly questions: readonly ImportQuestion[];
}

/**
 * Looks at a table before it is imported: its separator, its columns with samples, what each looks
 * like, and what has to be asked. Column names are not interpreted, so any language will do.
 *
 * @returns the table as one column when no separator is found; no columns for an empty text.
 * @example
 * ```ts
 * import { previewImport } from '@windlass/core/progress';
 * const preview = previewImport('Tag;Was;Last;Wdh\n02.03.2026;Rudern;102,5;5\n04.03.2026;Rudern;105;4');
 * preview.separator; // ';'
 * preview.columns.map(({ looksLike }) => looksLike); // ['date', 'text', 'load', 'count']
 * preview.suggestion; // { date: 0, exercise: 1, load: 2, reps: 3 }
 * preview.questions; // ['date-order', 'unit']
 * ```
 */
export function previewImport(text: string, separator?: Separator): ImportPreview {
  const found = separator ?? detectSeparator(text) ?? ',';
  const { rows, broken } = readTable(text, found);
  const [header, ...body] = rows;
  const columns = (header?.cells ?? []).map((name, column) => columnPreview(name, column, body));
  const suggestion = suggest(columns, body);
  return {
    separator: found,
    rows: body.length,
    columns,
    broken,
    suggestion,
    questions: questionsOf(suggestion, body),
  };
}

const ROWS_LOOKED_AT = 500;

function cellsOf(column: number, rows: readonly TableRow[]): readonly string[] {
  return rows
    .slice(0, ROWS_LOOKED_AT)
    .map(({ cells }) => (cells[column] ?? '').trim())
    .filter((cell) => cell !== '');
}

function columnPreview(header: string, column: number, rows: readonly TableRow[]): ColumnPreview {
  const cells = cellsOf(column, rows);
  const share = (holds: (cell: string) => boolean) => cells.filter(holds).length / cells.length;
  const looksLike =
    cells.length === 0
      ? 'empty'
      : share(isDate) >= 0.8
        ? 'date'
        : share((cell) => readRepsCell(cell).ok) >= 0.8
          ? 'count'
          : share(isLoad) >= 0.8
            ? 'load'
            : 'text';
  return { column, header: header.trim(), samples: cells.slice(0, 3), looksLike };
}

function isDate(cell: string): boolean {
  return (['day-first', 'month-first', 'year-first'] as const).some(
    (dateOrder) => readDate(cell, { dateOrder, shortYearsFrom: 2000 }).ok,
  );
}

function isLoad(cell: string): boolean {
  return readLoadCell(cell, { unit: 'kg', counts: 'total', locale: 'en' }).ok;
}

/** One column for each need, only where a single one fits; two columns of counts stay a question. */
function suggest(
  columns: readonly ColumnPreview[],
  rows: readonly TableRow[],
): Partial<LogColumns> {
  const those = (kind: ColumnPreview['looksLike']) =>
    columns.filter(({ looksLike }) => looksLike === kind).map(({ column }) => column);
  const only = (list: readonly number[]) => (list.length === 1 ? list[0] : undefined);
  const repeated = those('text').filter((column) => {
    const cells = cellsOf(column, rows);
    return new Set(cells).size < cells.length;
  });
  const date = only(those('date'));
  const exercise = only(those('text')) ?? only(repeated);
  const load = only(those('load'));
  const reps = only(those('count'));
  return {
    ...(date === undefined ? {} : { date }),
    ...(exercise === undefined ? {} : { exercise }),
    ...(load === undefined ? {} : { load }),
    ...(reps === undefined ? {} : { reps }),
  };
}

function questionsOf(
  { date, exercise, load, reps }: Partial<LogColumns>,
  rows: readonly TableRow[],
): readonly ImportQuestion[] {
  const dates = typeof date === 'number' ? cellsOf(date, rows) : [];
  const loads = typeof load === 'number' ? cellsOf(load, rows) : [];
  const asksForOrder = (cell: string) => {
    const read = readDate(cell, {});
    return !read.ok && read.problems.some(({ code }) => code === 'progress.date-order');
  };
  const isShort = (cell: string) => /^\d{1,2}\D+\d{1,2}\D+\d{2}$/.test(cell);
  return [
    ...(dates.some(asksForOrder) ? (['date-order'] as const) : []),
    ...(dates.some(isShort) ? (['short-years'] as const) : []),
    ...(loads.some((cell) => !/(?:kg|kilo|lb|pound|#)/i.test(cell)) ? (['unit'] as const) : []),
    ...([date, exercise, load, reps].includes(undefined) ? (['columns'] as const) : []),
  ];
}
