import type { LogDensity } from './Axis.ts';

/**
 * A density or likelihood smeared along one axis by a normal error of standard deviation `sd`, one
 * for all lines or one for each by its place on the other axis. Beyond the plane a likelihood keeps its edge value (`hold`) and a density is empty (`empty`).
 */
export function blur(
  density: LogDensity,
  side: 'columns' | 'rows',
  sd: number | ((place: number) => number),
  beyond: 'hold' | 'empty',
): LogDensity {
  const axis = density[side];
  const other = density[side === 'columns' ? 'rows' : 'columns'];
  const across = density.columns.count;
  const [stride, lines, lineStride] =
    side === 'columns' ? [1, density.rows.count, across] : [across, across, 1];
  const logs = new Float64Array(density.logs.length);
  let largest = Number.NEGATIVE_INFINITY;
  for (const log of density.logs) if (log > largest) largest = log;
  for (let index = 0; index < lines; index += 1) {
    const start = index * lineStride;
    const error = typeof sd === 'number' ? sd : sd(other.from + other.step * index);
    const kernel = kernelOf(error / axis.step, axis.count);
    const reach = (kernel.length - 1) / 2;
    // the line with what lies beyond its ends, so that every cell is treated alike
    const line = new Float64Array(axis.count + 2 * reach);
    for (let cell = 0; cell < axis.count; cell += 1) {
      line[reach + cell] = Math.exp((density.logs[start + cell * stride] as number) - largest);
    }
    if (beyond === 'hold') {
      line.fill(line[reach] as number, 0, reach);
      line.fill(line[reach + axis.count - 1] as number, reach + axis.count);
    }
    for (let cell = 0; cell < axis.count; cell += 1) {
      let sum = 0;
      for (let tap = 0; tap < kernel.length; tap += 1) {
        sum += (kernel[tap] as number) * (line[cell + tap] as number);
      }
      logs[start + cell * stride] = Math.log(Math.max(sum, 1e-300)) + largest;
    }
  }
  return { ...density, logs };
}

/** Weights of a normal error in cells, to 4 SD; below 0.6 cells three weights that keep its variance. */
function kernelOf(cells: number, most: number): Float64Array {
  if (cells < 0.6) {
    return Float64Array.of((cells * cells) / 2, 1 - cells * cells, (cells * cells) / 2);
  }
  const reach = Math.min(Math.ceil(4 * cells), most);
  const weights = Float64Array.from({ length: 2 * reach + 1 }, (_, index) =>
    Math.exp(-0.5 * ((index - reach) / cells) ** 2),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
