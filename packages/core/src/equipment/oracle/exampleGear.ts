import type { Barbell, Plate, PlateStock } from '../Equipment.ts';
import type { PlateLoading } from '../Loading.ts';

/** Plates in kilograms, so many pieces of each weight. */
export function kgPlates(weights: readonly number[], pieces: number): readonly PlateStock[] {
  return weights.map((value) => ({ weight: { value, unit: 'kg' }, pieces }));
}

/** A bar of so many kilograms. */
export function kgBar(value: number): Barbell {
  return {
    kind: 'barbell',
    id: `bar-${value}`,
    name: `${value} kg bar`,
    bar: { value, unit: 'kg' },
  };
}

/** One plate. */
export function plate(value: number, unit: 'kg' | 'lb' = 'kg'): Plate {
  return { weight: { value, unit } };
}

/** A bar with these plates on each end. */
export function bothEnds(...plates: readonly Plate[]): PlateLoading {
  return ends(plates, plates);
}

/** A bar with these plates on its ends. */
export function ends(left: readonly Plate[], right: readonly Plate[]): PlateLoading {
  return {
    kind: 'plates',
    stacks: [
      { place: 'left', plates: left },
      { place: 'right', plates: right },
    ],
    pieces: left.length + right.length,
  };
}
