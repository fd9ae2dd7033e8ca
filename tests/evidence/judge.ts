import type { Comparison, Figure, Order } from './Comparison.ts';

/** A row with what came of it. */
export type JudgedRow = (Figure | Order) & { readonly inside: boolean };

/** A comparison with its rows judged. */
export interface Judged {
  readonly comparison: Comparison;
  readonly rows: readonly JudgedRow[];
  /** Rows that count: read in their source, and asked of the library. */
  readonly counted: number;
  /** Counted rows within their tolerance. */
  readonly inside: number;
  /** Counted rows that no constant of the library was chosen on, and those of them inside. */
  readonly foretold: { readonly counted: number; readonly inside: number };
  /** The counted row that is furthest off for its tolerance; none where only orders are compared. */
  readonly worst: JudgedRow | undefined;
}

/** The rows of a comparison against their tolerances. */
export function judge(comparison: Comparison): Judged {
  const rows = comparison.rows().map((row): JudgedRow => ({ ...row, inside: isInside(row) }));
  const counted = rows.filter(({ aside }) => aside === undefined);
  const foretold = counted.filter(({ fitted }) => !fitted);
  const strained = counted
    .filter((row) => !('holds' in row && row.holds))
    .sort((a, b) => strain(b, comparison) - strain(a, comparison));
  return {
    comparison,
    rows,
    counted: counted.length,
    inside: counted.filter(({ inside }) => inside).length,
    foretold: {
      counted: foretold.length,
      inside: foretold.filter(({ inside }) => inside).length,
    },
    worst: strained[0],
  };
}

function isInside(row: Figure | Order): boolean {
  if ('holds' in row) return row.holds;
  const [low, high] = row.allowed;
  return row.predicted >= low && row.predicted <= high;
}

/** How far off the middle of what is allowed, in half widths: above 1 is outside. */
function strain(row: JudgedRow, { logarithmic }: Comparison): number {
  if ('holds' in row) return row.inside ? 0 : Number.POSITIVE_INFINITY;
  const scale = logarithmic ? Math.log : (value: number) => value;
  const [low, high] = row.allowed.map(scale) as [number, number];
  const at = scale(row.predicted);
  if (Number.isFinite(low) && Number.isFinite(high)) {
    return Math.abs(at - (low + high) / 2) / ((high - low) / 2);
  }
  return row.inside ? 0 : Number.MAX_VALUE;
}
