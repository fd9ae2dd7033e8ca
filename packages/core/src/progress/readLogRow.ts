import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import { parseTempo } from '../tempo/index.ts';
import { matchSides } from './cells/matchSides.ts';
import { readBodyWeight } from './cells/readBodyWeight.ts';
import { readDate } from './cells/readDate.ts';
import { readEnd } from './cells/readEnd.ts';
import { readLoads } from './cells/readLoads.ts';
import { readNumberCell } from './cells/readNumberCell.ts';
import { readRepsCell } from './cells/readRepsCell.ts';
import { readSide } from './cells/readSide.ts';
import type { LoggedSet } from './LoggedSet.ts';
import type { LogField, LogMapping } from './LogMapping.ts';

/** A set without its number, which comes from the rows before it unless it is written. */
export type UnnumberedSet = Omit<LoggedSet, 'set'> & { readonly set?: number };

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
  const counted = cells.reps ?? '';
  const reps = take(readRepsCell(counted));
  const set = number('set', 1, 1000);
  const hands = number('hands', 1, 2);
  const restSeconds = number('rest', 0, 86_400);
  const bodyWeight = optional('body', (cell) => readBodyWeight(cell, mapping));
  const side = optional('side', readSide);
  const end = take(readEnd(cells));
  optional('tempo', (tempo) => {
    const read = parseTempo(tempo);
    return read.ok
      ? read
      : bad(...read.problems.map((problem) => ({ ...problem, path: ['tempo'] })));
  });
  const sides = loads && reps ? take(matchSides(loads, reps, side, counted)) : undefined;
  if (problems.length > 0 || date === undefined || name === undefined || sides === undefined) {
    return bad(...problems);
  }
  return good(
    sides.map((one) => ({
      date,
      exercise: idOf(name, mapping),
      ...(set === undefined ? {} : { set }),
      ...one,
      ...(hands === undefined ? {} : { hands: hands as 1 | 2 }),
      ...(bodyWeight === undefined ? {} : { bodyWeight }),
      ...(end === undefined ? {} : { end }),
      ...(cells.tempo ? { tempo: cells.tempo } : {}),
      ...(restSeconds === undefined ? {} : { restSeconds }),
      ...(cells.tags?.trim() ? { tags: cells.tags.trim().split(/\s+/) } : {}),
      ...(cells.equipment ? { equipment: cells.equipment } : {}),
      ...(cells.note ? { note: cells.note } : {}),
    })),
  );
}

/** A name like `constructor` stands for itself and not for what every object inherits. */
function idOf(name: string, { exercises = {} }: LogMapping): string {
  return Object.hasOwn(exercises, name) ? (exercises[name] ?? name) : name;
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
