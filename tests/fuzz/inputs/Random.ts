/** Draws that are the same for the same seed. */
export interface Random {
  /** From 0 up to, and without, `end`. */
  readonly below: (end: number) => number;
  readonly pick: <Item>(list: readonly Item[]) => Item;
  /** True once in `times`. */
  readonly oneIn: (times: number) => boolean;
}

/** Random numbers from a 32-bit seed by the Mulberry32 generator (Tommy Ettinger, public domain). */
export function randomFrom(seed: number): Random {
  let state = seed | 0;
  function below(end: number): number {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * end);
  }
  return {
    below,
    pick: (list) => list[below(list.length)] as (typeof list)[number],
    oneIn: (times) => below(times) === 0,
  };
}
