declare const loadBrand: unique symbol;

/**
 * An exact load: a whole number of steps of 10 ng (1e-11 kg).
 *
 * One kilogram is 100,000,000,000 steps and one pound 45,359,237,000 (the international pound of
 * 1959, exactly), so every decimal of a kilogram down to 1e-11 and of a pound down to 0.001 is
 * whole, and comparing, adding and testing against a grid is integer arithmetic. The range of
 * exact integers reaches 90 t. Loads compare with `<`, `===` and sort as numbers.
 */
export type Load = number & { readonly [loadBrand]: true };

export type Unit = 'kg' | 'lb';

export const STEPS_PER_KG = 100_000_000_000;
export const STEPS_PER_LB = 45_359_237_000;

/** A load as people give it and files keep it: with the unit it was given in. */
export interface LoadValue {
  readonly value: number;
  readonly unit: Unit;
}
