/** An axis from data to a length of the picture, with the values that are written on it. */
export interface PlotAxis {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

/** An axis over these values, drawn from `from` to `to`. */
export function axis(
  values: readonly number[],
  logarithmic: boolean,
  from: number,
  to: number,
): PlotAxis {
  const scale = logarithmic ? Math.log : (value: number) => value;
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = logarithmic ? 0.04 : 0.06;
  const span = scale(most) - scale(least) || 1;
  const [low, high] = [scale(least) - room * span, scale(most) + room * span];
  const candidates = logarithmic ? roundSeries(least, most) : roundSteps(least, most);
  return {
    at: (value) => from + ((scale(value) - low) / (high - low)) * (to - from),
    ticks: candidates.filter((tick) => scale(tick) >= low && scale(tick) <= high),
  };
}

/** 1, 2, 5, 10, 20 … around the values; only powers of ten when that would be too many. */
function roundSeries(least: number, most: number): readonly number[] {
  const first = Math.floor(Math.log10(least)) - 1;
  const last = Math.ceil(Math.log10(most)) + 1;
  const powers = Array.from({ length: last - first + 1 }, (_, index) => 10 ** (first + index));
  const digits = most / least > 2000 ? [1] : most / least > 100 ? [1, 3] : [1, 2, 5];
  return powers.flatMap((power) => digits.map((digit) => Number((digit * power).toPrecision(1))));
}

/** Multiples of a round step, about five. */
function roundSteps(least: number, most: number): readonly number[] {
  const rough = (most - least || Math.abs(most) || 1) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((digit) => digit * power >= rough) ?? 10);
  const first = Math.floor(least / step) - 1;
  const count = Math.ceil((most - least) / step) + 3;
  return Array.from({ length: count }, (_, index) => Number(((first + index) * step).toFixed(10)));
}
