const BETWEEN_ROWS = '~';
const BETWEEN_CELLS = '_';

/** The cells of a rows text such as `20kg_4~10kg_2`; no row for an empty text. */
export function rowTexts(text: string): readonly (readonly string[])[] {
  return text === '' ? [] : text.split(BETWEEN_ROWS).map((row) => row.split(BETWEEN_CELLS));
}

/** The text of rows of cells. The two marks cannot be inside a cell: a blank takes their place. */
export function joinRows(rows: readonly (readonly string[])[]): string {
  const clean = (cell: string) => cell.replace(/[_~]/g, ' ');
  return rows.map((row) => row.map(clean).join(BETWEEN_CELLS)).join(BETWEEN_ROWS);
}
