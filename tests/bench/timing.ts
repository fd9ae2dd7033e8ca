/** Milliseconds a call, once the engine has seen it: the fastest of some rounds of many calls. */
export function fastest(call: () => unknown, rounds = 41, roundMs = 5): number {
  const once = timed(call);
  const calls = Math.max(1, Math.ceil(roundMs / Math.max(once, 1e-4)));
  for (let spent = once; spent < 10 * roundMs; ) spent += timed(call);
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    for (let index = 0; index < calls; index += 1) call();
    best = Math.min(best, (performance.now() - start) / calls);
  }
  return best;
}

/** Milliseconds of a call that takes long: the fastest of so many, as a busy machine only adds. */
export function fastestOf(rounds: number, call: () => unknown): number {
  return Math.min(...Array.from({ length: rounds }, () => timed(call)));
}

/** Milliseconds of one call. */
function timed(call: () => unknown): number {
  const start = performance.now();
  call();
  return performance.now() - start;
}

/** A duration for people. */
export function written(milliseconds: number): string {
  if (milliseconds < 0.001) return `${(1e6 * milliseconds).toFixed(0)} ns`;
  if (milliseconds < 1) return `${(1000 * milliseconds).toFixed(milliseconds < 0.01 ? 1 : 0)} µs`;
  return milliseconds < 1000
    ? `${milliseconds.toFixed(milliseconds < 10 ? 1 : 0)} ms`
    : `${(milliseconds / 1000).toFixed(1)} s`;
}

/** A ratio for people. */
export function times(ratio: number): string {
  return `${ratio < 10 ? ratio.toFixed(1) : Math.round(ratio)} times`;
}
