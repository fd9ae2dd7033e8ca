import { logCsvColumns } from '@windlass/core/progress';
import { treacherousNames } from './nasty.ts';
import type { Random } from './Random.ts';
import { anyText, damaged, dateText, loadText, numberText, several, tempoText } from './texts.ts';

/** A log as a table of separated values: of our own columns or anybody's, often damaged. */
export function tableText(random: Random): string {
  const separator = random.pick([',', ',', ';', '\t', '|']);
  const end = random.pick(['\n', '\n', '\r\n', '\r']);
  const header = random.oneIn(3) ? several(random, 6, () => headerCell(random)) : logCsvColumns;
  const row = () => header.map((name) => cellText(name, random)).slice(0, random.oneIn(9) ? 3 : 40);
  const rows = [header, ...several(random, 5, row)];
  const text = rows
    .map((cells) => cells.map((cell) => quoted(cell, separator, random)).join(separator))
    .join(end);
  return (random.oneIn(9) ? '\ufeff' : '') + (random.oneIn(3) ? damaged(text, random) : text);
}

function headerCell(random: Random): string {
  return random.pick([...logCsvColumns, ...treacherousNames, 'Tag', 'Last', anyText(random)]);
}

const words = new Map(
  Object.entries({
    exercise: ['cable-pulldown', 'Row', 'Öffnen', ''],
    side: ['left', 'right', 'L', 'both', ''],
    unit: ['kg', 'lb', ''],
    counts: ['total', 'added', 'each-hand', 'assistance', ''],
    ended: ['failure', 'reserve', 'more', 'form', ''],
    tags: ['travel light', ''],
  }),
);

function cellText(column: string, random: Random): string {
  if (random.oneIn(12)) return anyText(random);
  if (column === 'date') return dateText(random);
  if (column === 'load' || column === 'body') return loadText(random);
  if (column === 'tempo') return tempoText(random);
  if (column === 'set' || column === 'hands') return String(1 + random.below(3));
  if (column === 'reps' || column === 'rest' || column === 'reserve') {
    return random.pick(['', String(random.below(30)), numberText(random), '8-10', '5+']);
  }
  return random.pick(words.get(column) ?? ['', anyText(random)]);
}

function quoted(cell: string, separator: string, random: Random): string {
  const needed = cell.includes(separator) || /["\r\n]/.test(cell);
  return random.oneIn(20) || (needed && !random.oneIn(6))
    ? `"${cell.replaceAll('"', '""')}"`
    : cell;
}
