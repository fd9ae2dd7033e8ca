import { bad, good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { RowsField, Texts } from './Field.ts';
import { type FieldProblem, refuse } from './FieldProblem.ts';
import { readScalar } from './readScalar.ts';
import { rowTexts } from './rowTexts.ts';

type Row = Readonly<Record<string, unknown>>;

/**
 * All rows of a text, or every cell that is wrong, each with its row and column in `path`. A column
 * that is hidden has its default value.
 */
export function readRows(field: RowsField, text: string, texts: Texts): Outcome<readonly Row[]> {
  const rows = rowTexts(text);
  if (rows.length < field.minRows || rows.length > field.maxRows) {
    const { minRows, maxRows, rowName } = field;
    return refuse('row-count', words.problems.rows(minRows, maxRows, rowName), text);
  }
  const read = rows.map((cells, index) => readRow(field, cells, index, texts));
  const problems = read.flatMap((row) => (row.ok ? [] : row.problems));
  if (problems.length > 0) return bad(...problems);
  return good(read.flatMap((row) => (row.ok ? [row.value] : [])));
}

function readRow(
  field: RowsField,
  cells: readonly string[],
  index: number,
  texts: Texts,
): Outcome<Row> {
  const columns = Object.entries(field.columns);
  if (cells.length !== columns.length) {
    const message = words.problems.cells(columns.length);
    return bad(inRow(field, index, refuse('damaged-row', message, cells.join(' ')).problems[0]));
  }
  const values: Record<string, unknown> = {};
  const problems: FieldProblem[] = [];
  columns.forEach(([name, column], place) => {
    const isHidden = column.when !== undefined && !column.when(texts);
    const read = isHidden ? good(column.default) : readScalar(column, cells[place] ?? '');
    if (read.ok) values[name] = read.value;
    else problems.push(...read.problems.map((problem) => inRow(field, index, problem, name)));
  });
  return problems.length > 0 ? bad(...problems) : good(values);
}

function inRow(
  field: RowsField,
  index: number,
  problem: FieldProblem | undefined,
  ...column: readonly string[]
): FieldProblem {
  const { code, message, received } = problem as FieldProblem;
  const said = words.problems.inRow(field.rowName, index + 1, message);
  return { code, message: said, received, path: [index, ...column] };
}
