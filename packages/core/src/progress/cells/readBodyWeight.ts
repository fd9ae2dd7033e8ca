import { bad, good, type Outcome } from '../../basis/index.ts';
import { type LoadValue, parseLoad } from '../../load/index.ts';
import type { LogMapping } from '../LogMapping.ts';

/** A body weight from a cell, above 0, in the mapping's unit where the cell says none. */
export function readBodyWeight(
  cell: string,
  { unit, decimalMark }: LogMapping,
): Outcome<LoadValue> {
  const read = parseLoad(cell, {
    unit,
    ...(decimalMark === undefined ? {} : { locale: decimalMark === ',' ? 'de' : 'en' }),
  });
  if (!read.ok) return bad(...read.problems.map((problem) => ({ ...problem, path: ['body'] })));
  if (read.value.value > 0) return good(read.value);
  return bad({
    code: 'progress.no-body-weight',
    path: ['body'],
    message: 'Write a body weight above 0, for example 82 kg.',
    received: cell,
  });
}
