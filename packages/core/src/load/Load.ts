declare const loadBrand: unique symbol;

/**
 * An exact load: a whole number of steps of 10 ng (1e-11 kg), from -45 t to 45 t.
 *
 * One kilogram is 100,000,000,000 steps and one pound 45,359,237,000 (the international pound of
 * 1959, exactly), so every decimal of a kilogram down to 1e-11 and of a pound down to 0.001 is
 * whole, and comparing, adding and testing against a grid is integer arithmetic. The difference
 * of any two loads is still an exact integer. Loads compare with `<`, `===` and sort as numbers.
 */
export type Load = number & { readonly [loadBrand]: true };

/** The units people load in: the kilogram, and the international pound of 0.45359237 kg. */
export type Unit = 'kg' | 'lb';

/** Steps in a kilogram: a step is 10 ng. */
export const STEPS_PER_KG = 100_000_000_000;

/** Steps in an international pound: 0.45359237 kg, exactly. */
export const STEPS_PER_LB = 45_359_237_000;

/** The heaviest load there is, 45,000 kg; the lightest is its negative. */
export const LARGEST_LOAD = (45_000 * STEPS_PER_KG) as Load;

/** A load as people give it and files keep it: with the unit it was given in. */
export interface LoadValue {
  readonly value: number;
  readonly unit: Unit;
}
