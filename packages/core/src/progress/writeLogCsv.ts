import type { LoggedSet } from './LoggedSet.ts';
import { logCsvColumns } from './logCsvColumns.ts';
import { plainDecimal } from './table/plainDecimal.ts';
import { writeTable } from './table/writeTable.ts';

/**
 * Writes a log as a CSV file of our own format, which `readLogCsv` reads back exactly.
 *
 * UTF-8, commas, CR LF, one row a set (one a side where sides were counted apart), decimal points,
 * dates year-month-day. Columns: `date`, `exercise`, `set`, `side` (left, right), `load`, `unit`
 * (kg, lb), `counts` (total, each-hand, stack, plates, added), `hands`, `body` (body weight with its unit, `82 kg`),
 * `reps`, `ended` (failure,
 * reserve, more), `reserve` (repetitions left), `tempo`, `rest` (seconds before the set), `tags`
 * (separated by spaces), `equipment`, `note`. An empty cell means that nothing was noted. Help is
 * a negative number and stays one: no mark is put before it.
 *
 * @returns the header alone for an empty log.
 * @example
 * ```ts
 * import { writeLogCsv } from '@windlass/core/progress';
 * const load = { value: -20, unit: 'kg' } as const;
 * const bodyWeight = { value: 82, unit: 'kg' } as const;
 * const file = writeLogCsv([
 *   { date: '2026-03-02', exercise: 'chin-up', set: 1, load, counts: 'added', bodyWeight, reps: 8 },
 * ]);
 * file.split('\r\n')[1]; // '2026-03-02,chin-up,1,,-20,kg,added,,82 kg,8,,,,,,,'
 * ```
 */
export function writeLogCsv(sets: readonly LoggedSet[]): string {
  return writeTable([logCsvColumns, ...sets.map(rowOf)]);
}

function rowOf(set: LoggedSet): readonly string[] {
  const { load, end } = set;
  return [
    set.date,
    set.exercise,
    String(set.set),
    set.side ?? '',
    plainDecimal(load.value),
    load.unit,
    set.counts,
    set.hands === undefined ? '' : String(set.hands),
    set.bodyWeight ? `${plainDecimal(set.bodyWeight.value)} ${set.bodyWeight.unit}` : '',
    String(set.reps),
    end?.kind ?? '',
    end?.kind === 'reserve'
      ? String(end.repsLeft)
      : end?.kind === 'more'
        ? String(end.atLeast)
        : '',
    set.tempo ?? '',
    set.restSeconds === undefined ? '' : String(set.restSeconds),
    set.tags?.join(' ') ?? '',
    set.equipment ?? '',
    set.note ?? '',
  ];
}
