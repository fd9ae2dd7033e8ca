import { repsAtShare } from '../../packages/core/src/strength/index.ts';
import type { RepCount } from './RepGroup.ts';

/**
 * The kappa that comes nearest to a group's counts, by least squares of their logarithms, found by
 * golden section on ln kappa from 3 to 500.
 */
export function fitKappa(counts: readonly RepCount[], alpha: number): number {
  const cost = (lnKappa: number) => logError(counts, { kappa: Math.exp(lnKappa), alpha }) ** 2;
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = Math.log(3);
  let high = Math.log(500);
  while (high - low > 1e-9) {
    const a = high - ratio * (high - low);
    const b = low + ratio * (high - low);
    if (cost(a) < cost(b)) high = b;
    else low = a;
  }
  return Math.exp((low + high) / 2);
}

/** Root mean square of ln(predicted / observed). */
export function logError(
  counts: readonly RepCount[],
  curve: { readonly kappa: number; readonly alpha: number },
): number {
  const squares = counts.map(({ share, reps }) => Math.log(repsAtShare(share, curve) / reps) ** 2);
  return Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / counts.length);
}
