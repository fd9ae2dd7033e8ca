/** Evenly spaced values: `from + step * index` for index 0 to count - 1. */
export interface Axis {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}

/** A plane of ln(one-rep max in kg) across by ln(kappa) down, cell = row * columns.count + column. */
export interface Plane {
  readonly columns: Axis;
  readonly rows: Axis;
}

/** Logarithms of a density over a plane, up to a constant. */
export interface LogDensity extends Plane {
  readonly logs: Float64Array;
}

/** Mean and standard deviation. */
export interface Moments {
  readonly mean: number;
  readonly sd: number;
}
