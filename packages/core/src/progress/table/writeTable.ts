/**
 * Writes rows by RFC 4180: commas, CR LF, cells quoted where they have to be. Negative numbers
 * stay numbers: nothing is put before a sign.
 */
export function writeTable(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');
}

function written(cell: string): string {
  return /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
