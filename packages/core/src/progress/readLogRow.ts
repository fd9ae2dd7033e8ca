import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import type { Counts } from '../equipment/index.ts';
import { parseLoad, type Unit } from '../load/index.ts';
import { parseTempo } from '../tempo/index.ts';
import { readDate } from './cells/readDate.ts';
import { readEnd } from './cells/readEnd.ts';
import { type LoadRead, readLoadCell } from './cells/readLoadCell.ts';
import { readNumberCell } from './cells/readNumberCell.ts';
import { type RepsRead, readRepsCell } from './cells/readRepsCell.ts';
import type { LoggedSet } from './LoggedSet.ts';
import type { LogField, LogMapping } from './LogMapping.ts';

/** A set without its number, which comes from the rows before it unless it is written. */
export type UnnumberedSet = Omit<LoggedSet, 'set'> & { readonly set?: number };

const COUNTS: readonly Counts[] = ['total', 'each-hand', 'stack', 'plates', 'added'];

/** The sets that one row holds: one, or one for each side; or everything that is wrong with it. */
export function readLogRow(
  cells: Readonly<Partial<Record<LogField, string>>>,
  mapping: LogMapping,
): Outcome<readonly UnnumberedSet[]> {
  const problems: Problem[] = [];
  const take = <T>(outcome: Outcome<T>): T | undefined => {
    if (outcome.ok) return outcome.value;
    problems.push(...outcome.problems);
    return undefined;
  };
  const optional = <T>(field: LogField, read: (cell: string) => Outcome<T>): T | undefined => {
    const cell = cells[field] ?? '';
    return cell === '' ? undefined : take(read(cell));
  };
  const number = (field: LogField, min: number, max: number) =>
    optional(field, (cell) => readNumberCell(cell, field, min, max));
  const date = take(readDate(cells.date ?? '', mapping));
  const name = take(readName(cells.exercise ?? ''));
  const loads = take(readLoads(cells, mapping));
  const reps = take(readRepsCell(cells.reps ?? ''));
  const set = number('set', 1, 1000);
  const hands = number('hands', 1, 2);
  const restSeconds = number('rest', 0, 86_400);
  const side = optional('side', readSide);
  const end = take(readEnd(cells));
  optional('tempo', (tempo) => {
    const read = parseTempo(tempo);
    return read.ok
      ? read
      : bad(...read.problems.map((problem) => ({ ...problem, path: ['tempo'] })));
  });
  const sides = loads && reps ? take(matchSides(loads, reps, side, cells.reps ?? '')) : undefined;
  if (problems.length > 0 || date === undefined || name === undefined || sides === undefined) {
    return bad(...problems);
  }
  return good(
    sides.map((one) => ({
      date,
      exercise: mapping.exercises?.[name] ?? name,
      ...(set === undefined ? {} : { set }),
      ...one,
      ...(hands === undefined ? {} : { hands: hands as 1 | 2 }),
      ...(end === undefined ? {} : { end }),
      ...(cells.tempo ? { tempo: cells.tempo } : {}),
      ...(restSeconds === undefined ? {} : { restSeconds }),
      ...(cells.tags ? { tags: cells.tags.split(/\s+/) } : {}),
      ...(cells.equipment ? { equipment: cells.equipment } : {}),
      ...(cells.note ? { note: cells.note } : {}),
    })),
  );
}

function readName(cell: string): Outcome<string> {
  return cell === ''
    ? bad({
        code: 'progress.no-exercise',
        path: ['exercise'],
        message: 'Write the name of the exercise.',
        received: cell,
      })
    : good(cell);
}

function readLoads(
  cells: Readonly<Partial<Record<LogField, string>>>,
  mapping: LogMapping,
): Outcome<readonly LoadRead[]> {
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
  if (cell === '') return good(otherwise);
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

function readSide(cell: string): Outcome<'left' | 'right'> {
  const side = { l: 'left', left: 'left', r: 'right', right: 'right' }[cell.toLowerCase()];
  return side === undefined
    ? bad({
        code: 'progress.unknown-side',
        path: ['side'],
        message: 'Write left or right.',
        received: cell,
      })
    : good(side as 'left' | 'right');
}

type OneSide = LoadRead & { readonly reps: number };

/** One set for each side that was written; what belongs to which side is never guessed. */
function matchSides(
  loads: readonly LoadRead[],
  reps: RepsRead,
  side: 'left' | 'right' | undefined,
  received: string,
): Outcome<readonly OneSide[]> {
  const [first, second] = loads;
  if (first === undefined) return good([]);
  if (second === undefined && reps.kind === 'one') {
    return good([{ ...first, ...(side === undefined ? {} : { side }), reps: reps.reps }]);
  }
  if (second === undefined || reps.kind === 'one') {
    return bad({
      code: 'progress.sides-unclear',
      path: ['reps'],
      message:
        'Say which side had how many: L 30 / R 30 as the load with 8/10 as repetitions, or a row for each side.',
      received,
    });
  }
  return good([
    { ...first, reps: reps.first },
    { ...second, reps: reps.second },
  ]);
}
