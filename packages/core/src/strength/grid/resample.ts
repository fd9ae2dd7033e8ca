import type { Axis, LogDensity, Plane } from './Axis.ts';

/** Log of a density where there is next to nothing. */
const NOTHING = -700;
/** A fall of the logarithm within four cells that no density on its own grid has. */
const CLIFF = 60;

/**
 * A density read off on another plane: cubic interpolation of its logarithm along both axes, exact
 * for a normal density. Outside the old plane there is next to nothing.
 */
export function resample(density: LogDensity, plane: Plane): LogDensity {
  const { columns, rows, logs } = density;
  const wide = new Float64Array(plane.columns.count * rows.count);
  for (let column = 0; column < plane.columns.count; column += 1) {
    const place = stencil(columns, plane.columns, column);
    for (let row = 0; row < rows.count; row += 1) {
      wide[row * plane.columns.count + column] = read(logs, place, row * columns.count, 1);
    }
  }
  const result = new Float64Array(plane.columns.count * plane.rows.count);
  for (let row = 0; row < plane.rows.count; row += 1) {
    const place = stencil(rows, plane.rows, row);
    for (let column = 0; column < plane.columns.count; column += 1) {
      const cell = row * plane.columns.count + column;
      result[cell] = read(wide, place, column, plane.columns.count);
    }
  }
  return { columns: plane.columns, rows: plane.rows, logs: result };
}

interface Stencil {
  readonly first: number;
  readonly factors: readonly [number, number, number, number];
  /** Where the new cell lies between the two middle old ones, for a straight line. */
  readonly between: number;
}

/** The four old cells around a new one and their Lagrange factors; none outside the old axis. */
function stencil(old: Axis, fresh: Axis, index: number): Stencil | undefined {
  const at = (fresh.from + fresh.step * index - old.from) / old.step;
  if (at < -0.5 || at > old.count - 0.5) return undefined;
  const first = Math.min(Math.max(Math.floor(at) - 1, 0), old.count - 4);
  const a = at - first;
  const [b, c, d] = [a - 1, a - 2, a - 3];
  return {
    first,
    factors: [-(b * c * d) / 6, (a * c * d) / 2, -(a * b * d) / 2, (a * b * c) / 6],
    between: Math.min(1, Math.max(0, b)),
  };
}

function read(
  logs: Float64Array,
  place: Stencil | undefined,
  start: number,
  stride: number,
): number {
  if (place === undefined) return NOTHING;
  const from = start + place.first * stride;
  const a = logs[from] as number;
  const b = logs[from + stride] as number;
  const c = logs[from + 2 * stride] as number;
  const d = logs[from + 3 * stride] as number;
  // a cubic through a cliff would swing above both sides
  if (Math.max(a, b, c, d) - Math.min(a, b, c, d) > CLIFF) return b + place.between * (c - b);
  const [p, q, r, s] = place.factors;
  return p * a + q * b + r * c + s * d;
}
