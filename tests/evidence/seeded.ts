/** A seeded source of random numbers, the same on every machine. */
export interface Seeded {
  /** Evenly from 0 to 1. */
  readonly even: () => number;
  /** From the standard normal distribution. */
  readonly normal: () => number;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
}

/** Numbers by the 32-bit mixing of Steele, Lea and Flood (2014), normals by Box and Muller (1958). */
export function seeded(seed: number): Seeded {
  let state = seed | 0;
  const even = () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal, whole: (low, high) => low + Math.floor(even() * (high - low + 1)) };
}
