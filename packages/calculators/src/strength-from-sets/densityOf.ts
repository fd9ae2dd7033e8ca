import type { StrengthPosterior } from '@windlass/core/strength';

/** Height of the belief at a one-rep max. */
export interface DensityPoint {
  readonly kg: number;
  /** Probability for each kilogram, as a share of the highest. */
  readonly height: number;
}

/** The belief about the one-rep max as a curve over kilograms, where it is worth drawing. */
export function densityOf({ usual, lnMax }: StrengthPosterior): readonly DensityPoint[] {
  const chances = Array.from({ length: lnMax.count }, () => 0);
  usual.forEach((chance, cell) => {
    const column = cell % lnMax.count;
    chances[column] = (chances[column] ?? 0) + chance;
  });
  const points = chances.map((chance, column) => {
    const kg = Math.exp(lnMax.from + lnMax.step * column);
    return { kg, height: chance / kg };
  });
  const most = Math.max(...points.map(({ height }) => height));
  const scaled = points.map(({ kg, height }) => ({ kg, height: height / most }));
  const seen = scaled.map(({ height }) => height > 0.003);
  return scaled.slice(Math.max(0, seen.indexOf(true) - 1), seen.lastIndexOf(true) + 2);
}
