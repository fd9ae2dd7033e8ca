/** How many points: a prime, as the lattice needs. */
export const DRAWS = 251;

/**
 * Points that fill the unit cube evenly, the same for the same seed.
 *
 * A Korobov lattice, `(i · 74^axis mod 251) / 251`, shifted by the seed: along every axis the points
 * are exactly even, so percentiles are as steady as those of thousands of random points. 74 is the
 * multiplier of smallest P2 for nine axes (weights one half), found by trying all.
 *
 * @param dimensions 1 to 9.
 * @param seed any finite number; different whole numbers shift the points differently.
 * @returns shares above 0 and below 1.
 */
export function evenDraws(dimensions: number, seed: number): readonly (readonly number[])[] {
  const axes: { multiplier: number; shift: number }[] = [];
  for (let axis = 0; axis < dimensions; axis++) {
    const multiplier = ((axes.at(-1)?.multiplier ?? 0) * 74) % DRAWS || 1;
    axes.push({ multiplier, shift: scramble(seed, axis) });
  }
  return Array.from({ length: DRAWS }, (_, index) =>
    axes.map(({ multiplier, shift }) => {
      const share = ((index * multiplier) % DRAWS) / DRAWS + shift;
      return Math.max(share < 1 ? share : share - 1, 2 ** -33);
    }),
  );
}

/** A number between 0 and 1 that depends on every bit of the seed and the axis. */
function scramble(seed: number, axis: number): number {
  let bits = Math.imul(Math.trunc(seed) ^ Math.imul(axis + 1, 0x9e37_79b9), 0x85eb_ca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2_ae35);
  bits ^= bits >>> 16;
  return ((bits >>> 0) + 0.5) / 2 ** 32;
}
