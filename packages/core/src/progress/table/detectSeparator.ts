import { readTable } from './readTable.ts';
import type { Separator } from './Table.ts';

const SEPARATORS: readonly Separator[] = [';', '\t', '|', ','];
const ROWS_LOOKED_AT = 100;

/**
 * The separator of a table, judged by how its rows hold together and not by which mark is most
 * frequent: decimal commas outnumber separators easily.
 *
 * A separator counts when the header has at least two cells by it; the best gives the most rows as
 * many cells as the header, and of equally good ones the most cells. A comma is the last choice.
 *
 * @returns nothing when no separator gives the header two cells.
 */
export function detectSeparator(text: string): Separator | undefined {
  const head = firstLines(text);
  let best: { separator: Separator; alike: number; cells: number } | undefined;
  for (const separator of SEPARATORS) {
    const { rows } = readTable(head, separator);
    const cells = rows[0]?.cells.length ?? 0;
    if (cells < 2) continue;
    const alike = rows.filter((row) => row.cells.length === cells).length / rows.length;
    const isBetter =
      best === undefined ||
      alike > best.alike + 0.1 ||
      (alike > best.alike - 0.1 && cells > best.cells);
    if (isBetter) best = { separator, alike, cells };
  }
  return best?.separator;
}

/** Enough lines to judge by, so that a long file costs no more than a short one. */
function firstLines(text: string): string {
  let end = -1;
  for (let line = 0; line < ROWS_LOOKED_AT; line += 1) {
    const next = text.indexOf('\n', end + 1);
    if (next < 0) return text;
    end = next;
  }
  return text.slice(0, end);
}
