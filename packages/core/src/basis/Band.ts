/**
 * A prediction about a person: never a bare number.
 *
 * `low` and `high` enclose the outcome with probability `level`; `likely` is the middle of the
 * distribution (its median). The unit is the unit of the field that holds the band.
 */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Probability that the outcome lies inside, between 0 and 1. */
  readonly level: number;
}
