import { bad, good, type Outcome } from '../../basis/index.ts';

/** A number from a cell, with decimal point or comma, between two limits. */
export function readNumberCell(
  cell: string,
  field: string,
  min: number,
  max: number,
): Outcome<number> {
  const value = /^\d+(?:[.,]\d+)?$/.test(cell) ? Number(cell.replace(',', '.')) : Number.NaN;
  return value >= min && value <= max
    ? good(value)
    : bad({
        code: 'progress.not-a-number',
        path: [field],
        message: `Write a number from ${min} to ${max}.`,
        params: { min, max },
        received: cell,
      });
}
