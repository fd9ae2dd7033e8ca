import { requireNumber } from '../basis/index.ts';

/** A load and the lifter's rep curve. */
export interface RepCostInput {
  /** Load as a share of the one-rep max at the reference tempo, above 0. */
  readonly intensity: number;
  /** The lifter's endurance constant on this lift at the tempo of the rep, above 0 (about 20 to 95). */
  readonly kappa: number;
  /** Bend of the rep curve towards light loads, 0.25 to 2. */
  readonly alpha: number;
}

/**
 * How much of an exercise's capacity one repetition takes: `intensity^alpha / kappa`.
 *
 * It is the rep curve `r(x) = 1 + κ(1 − x)/x^α` read the other way: reps come off a fresh
 * capacity of 1 at this price until less than the load is left. With α = 1 and κ = 1/(3F) it is
 * the loss in 3 s under load of the three-compartment model (Xia and Frey Law 2008).
 *
 * @returns capacity per rep, as a share of fresh lifting strength.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { repCost } from '@windlass/core/capacity';
 * repCost({ intensity: 0.8, kappa: 40, alpha: 1 }); // 0.02
 * ```
 */
export function repCost({ intensity, kappa, alpha }: RepCostInput): number {
  requireNumber('repCost', 'intensity', intensity, Number.MIN_VALUE);
  requireNumber('repCost', 'kappa', kappa, Number.MIN_VALUE);
  requireNumber('repCost', 'alpha', alpha, 0.25, 2);
  return intensity ** alpha / kappa;
}
