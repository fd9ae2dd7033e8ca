/** Two to six round values between two, for the labels of an axis. */
export function roundTicks(from: number, to: number): readonly number[] {
  const rough = Math.max(to - from, 1e-9) / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 2.5, 5, 10].find((times) => times * power >= rough) ?? 10);
  const first = Math.ceil(from / step);
  const count = Math.max(0, Math.floor(to / step) - first + 1);
  return Array.from({ length: count }, (_, at) => Number(((first + at) * step).toPrecision(9)));
}
