import { bad, good, type Outcome } from '../../basis/index.ts';
import type { Counts } from '../../equipment/index.ts';
import { parseLoad, type Unit } from '../../load/index.ts';
import type { LogField, LogMapping } from '../LogMapping.ts';
import { type LoadsRead, readLoadCell } from './readLoadCell.ts';

const COUNTS: readonly Counts[] = ['total', 'each-hand', 'stack', 'plates', 'added'];

/** The load of a row, by its own unit and count cells where it has them. */
export function readLoads(
  cells: Readonly<Partial<Record<LogField, string>>>,
  mapping: LogMapping,
): Outcome<LoadsRead> {
  const unit = readUnit(cells.unit ?? '', mapping.unit);
  const counts = readCounts(cells.counts ?? '', mapping.counts ?? 'total');
  if (!unit.ok) return unit;
  if (!counts.ok) return counts;
  const { decimalMark } = mapping;
  return readLoadCell(cells.load ?? '', {
    unit: unit.value,
    counts: counts.value,
    ...(decimalMark === undefined ? {} : { locale: decimalMark === ',' ? 'de' : 'en' }),
  });
}

function readUnit(cell: string, otherwise: Unit): Outcome<Unit> {
  const read = parseLoad(`1 ${cell}`, { unit: otherwise });
  return read.ok
    ? good(read.value.unit)
    : bad(...read.problems.map((problem) => ({ ...problem, path: ['unit'], received: cell })));
}

function readCounts(cell: string, otherwise: Counts): Outcome<Counts> {
  if (cell === '') return good(otherwise);
  const counts = COUNTS.find((known) => known === cell);
  return counts === undefined
    ? bad({
        code: 'progress.unknown-counts',
        path: ['counts'],
        message: `Write what the load counts: ${COUNTS.join(', ')}.`,
        received: cell,
      })
    : good(counts);
}
