/** What one session says of strength. */
export interface TrendPoint {
  readonly day: number;
  /** ln of the one-rep max in kg. */
  readonly y: number;
  readonly variance: number;
}

/** A line through points: its height in the weighted middle and its slope, with their spreads. */
export interface FittedLine {
  readonly centre: number;
  readonly level: number;
  readonly slope: number;
  readonly levelSd: number;
  readonly slopeSd: number;
}

/** Standard deviation of the slope of ln(one-rep max) a day before anything is seen: 1 % a week. */
const SLOPE_BEFORE = 0.01 / 7;

/** Weighted least squares about the weighted middle, with the slope drawn towards 0. */
export function fitLine(points: readonly TrendPoint[]): FittedLine {
  const sum = (value: (point: TrendPoint) => number) =>
    points.reduce((total, point) => total + value(point) / point.variance, 0);
  const weight = sum(() => 1);
  const centre = sum(({ day }) => day) / weight;
  const level = sum(({ y }) => y) / weight;
  const spread = sum(({ day }) => (day - centre) ** 2);
  const precision = spread + 1 / SLOPE_BEFORE ** 2;
  const slope = sum(({ day, y }) => (day - centre) * (y - level)) / precision;
  const misfit = sum(({ day, y }) => (y - level - slope * (day - centre)) ** 2);
  const widening = Math.sqrt(Math.max(1, misfit / (points.length - 2)));
  return {
    centre,
    level,
    slope,
    levelSd: widening / Math.sqrt(weight),
    slopeSd: widening / Math.sqrt(precision),
  };
}
