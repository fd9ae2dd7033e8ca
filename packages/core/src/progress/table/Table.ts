/** What stands between the cells of a row. */
export type Separator = ',' | ';' | '\t' | '|';

/** A row of a table with the line it begins on, from 1, and its text. */
export interface TableRow {
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** A row whose quotes do not add up. */
export interface BrokenRow {
  readonly line: number;
  readonly text: string;
  readonly reason: 'quote-not-closed' | 'text-after-quote';
}

/** Rows that were read, and those whose quotes do not add up. */
export interface Table {
  readonly rows: readonly TableRow[];
  readonly broken: readonly BrokenRow[];
}
