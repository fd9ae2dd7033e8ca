/**
 * Probability that a standard normal value lies below z.
 * Chebyshev fit of erfc (Press et al., Numerical Recipes, section 6.2), relative error below 1.2e-7.
 */
export function normalBelow(z: number): number {
  const x = Math.abs(z) * Math.SQRT1_2;
  const t = 1 / (1 + 0.5 * x);
  let sum = 0.17087277;
  for (let index = COEFFICIENTS.length - 1; index >= 0; index -= 1) {
    sum = (COEFFICIENTS[index] as number) + t * sum;
  }
  const upper = 0.5 * t * Math.exp(sum - x * x);
  return z > 0 ? 1 - upper : upper;
}

const COEFFICIENTS = [
  -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587,
  -0.82215223,
];
