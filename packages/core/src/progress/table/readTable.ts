import type { BrokenRow, Separator, Table, TableRow } from './Table.ts';

/**
 * Reads separated values by RFC 4180: quoted cells may hold separators, doubled quotes and line
 * ends. Lines end with CR LF, LF or CR; a byte-order mark is taken off; empty lines are no rows.
 *
 * It is written here, and not a library, because the core has no dependency and because of one
 * demand that parsers do not meet: a quote that is never closed must cost its own line only. Such a
 * line is reported and reading goes on with the next.
 */
export function readTable(text: string, separator: Separator): Table {
  const source = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const rows: TableRow[] = [];
  const broken: BrokenRow[] = [];
  let [position, line] = [0, 1];
  while (position < source.length) {
    const read = readRow(source, position, separator);
    if (read.kind === 'row') {
      const raw = source.slice(position, read.end);
      if (raw !== '') rows.push({ line, text: raw, cells: read.cells });
      line += lineEnds(raw) + 1;
      position = read.next;
    } else {
      const end = lineEnd(source, position);
      broken.push({ line, text: source.slice(position, end), reason: read.kind });
      line += 1;
      position = afterLineEnd(source, end);
    }
  }
  return { rows, broken };
}

type ReadRow =
  | {
      readonly kind: 'row';
      readonly cells: readonly string[];
      /** Where the row's text ends, and where the next row begins. */
      readonly end: number;
      readonly next: number;
    }
  | { readonly kind: BrokenRow['reason'] };

function readRow(source: string, start: number, separator: Separator): ReadRow {
  const cells: string[] = [];
  let position = start;
  for (;;) {
    if (source[position] === '"') {
      const quoted = readQuoted(source, position);
      if (quoted === undefined) return { kind: 'quote-not-closed' };
      cells.push(quoted.cell);
      position = quoted.end;
      if (!isCellEnd(source[position], separator)) return { kind: 'text-after-quote' };
    } else {
      const from = position;
      while (!isCellEnd(source[position], separator)) position += 1;
      cells.push(source.slice(from, position));
    }
    if (source[position] !== separator) {
      return { kind: 'row', cells, end: position, next: afterLineEnd(source, position) };
    }
    position += 1;
  }
}

/** The text between quotes, with doubled quotes as one; nothing when they are never closed. */
function readQuoted(source: string, start: number): { cell: string; end: number } | undefined {
  let cell = '';
  let from = start + 1;
  for (;;) {
    const quote = source.indexOf('"', from);
    if (quote < 0) return undefined;
    cell += source.slice(from, quote);
    if (source[quote + 1] !== '"') return { cell, end: quote + 1 };
    cell += '"';
    from = quote + 2;
  }
}

function isCellEnd(character: string | undefined, separator: Separator): boolean {
  return (
    character === undefined || character === separator || character === '\n' || character === '\r'
  );
}

function lineEnd(source: string, position: number): number {
  let end = position;
  while (end < source.length && source[end] !== '\n' && source[end] !== '\r') end += 1;
  return end;
}

function afterLineEnd(source: string, end: number): number {
  return source[end] === '\r' && source[end + 1] === '\n' ? end + 2 : end + 1;
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
