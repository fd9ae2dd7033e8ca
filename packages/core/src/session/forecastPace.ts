const PACE = { least: 1, most: 60 };

/**
 * Seconds a repetition as the forecasts of chains and of pairs take them: a tempo may be slower or
 * faster, and counts as the nearest that they are made for.
 */
export function forecastPace(secondsPerRep: number): number {
  return Math.min(Math.max(secondsPerRep, PACE.least), PACE.most);
}
