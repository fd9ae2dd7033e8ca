/** Probabilities of the cells: the exponentials of `logs`, scaled to sum 1. */
export function weightsOf(logs: Float64Array): Float64Array {
  let largest = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > largest) largest = log;
  const weights = logs.map((log) => Math.exp(log - largest));
  let sum = 0;
  for (const weight of weights) sum += weight;
  return weights.map((weight) => weight / sum);
}
