import { evidenceFigures } from '../evidenceFigures.ts';
import type { Moments, Plane } from '../grid/Axis.ts';
import { axisAround } from '../grid/axisAround.ts';

/** Cells of a plane across (one-rep max) and down (kappa). */
export interface Cells {
  readonly columns: number;
  readonly rows: number;
}

/** Enough for interval ends within 0.5 % and chances within half a point of a ten times finer plane. */
export const USUAL_CELLS: Cells = { columns: 96, rows: 32 };

/** The plane that covers these moments, and the form of the day on top. */
export function planeAround(
  { columns, rows }: { readonly columns: Moments; readonly rows: Moments },
  cells: Cells,
): Plane {
  const today = { mean: columns.mean, sd: Math.hypot(columns.sd, evidenceFigures.day) };
  return { columns: axisAround(today, cells.columns), rows: axisAround(rows, cells.rows) };
}
