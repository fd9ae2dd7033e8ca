import { type Cell, readReference } from './readReference.ts';

/** One published row, its cells by the names of their columns. */
export interface PublishedRow {
  /** The cell as it is printed; throws for a column that the table does not have. */
  readonly text: (column: string) => string;
  /** The cell as a number; throws where none is printed. */
  readonly number: (column: string) => number;
  /** Whether something is printed there. */
  readonly has: (column: string) => boolean;
}

/** The rows of one data set in `tests/reference`, by the names of their columns. */
export function readRows(id: string): readonly PublishedRow[] {
  const { columns, rows } = readReference(id);
  return rows.map((row) => {
    const cell = (column: string): Cell => {
      const at = columns.indexOf(column);
      if (at < 0) throw new Error(`${id} has no column ${column}`);
      return row[at] ?? null;
    };
    return {
      text: (column) => String(cell(column)),
      number: (column) => {
        const value = cell(column);
        if (typeof value !== 'number') throw new Error(`${id}: ${column} is ${value}, no number`);
        return value;
      },
      has: (column) => cell(column) !== null,
    };
  });
}
