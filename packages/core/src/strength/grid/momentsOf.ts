import type { Axis, LogDensity, Moments } from './Axis.ts';
import { weightsOf } from './weightsOf.ts';

/** Mean and spread along both axes of a density. */
export function momentsOf({ columns, rows, logs }: LogDensity): {
  readonly columns: Moments;
  readonly rows: Moments;
} {
  const weights = weightsOf(logs);
  const across = new Float64Array(columns.count);
  const down = new Float64Array(rows.count);
  for (let row = 0; row < rows.count; row += 1) {
    for (let column = 0; column < columns.count; column += 1) {
      const weight = weights[row * columns.count + column] as number;
      across[column] = (across[column] as number) + weight;
      down[row] = (down[row] as number) + weight;
    }
  }
  return { columns: momentsAlong(across, columns), rows: momentsAlong(down, rows) };
}

function momentsAlong(margin: Float64Array, axis: Axis): Moments {
  let sum = 0;
  let squares = 0;
  margin.forEach((weight, index) => {
    sum += weight * index;
    squares += weight * index * index;
  });
  const variance = Math.max(0, squares - sum * sum);
  return { mean: axis.from + axis.step * sum, sd: axis.step * Math.sqrt(variance) };
}
