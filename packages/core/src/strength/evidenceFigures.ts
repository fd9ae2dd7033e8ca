/**
 * How far a counted set can lie from the curve, in numbers alone: `evidenceModel` says where each
 * comes from.
 */
export const evidenceFigures = {
  /** Standard deviation of a repeated count: `base + perRep * reps`. */
  repeat: { base: 0.5, perRep: 0.045 },
  /** Error of the curve's form, as a share of the count: `base`, and more per share below `from`. */
  form: { base: 0.05, from: 0.55, perShare: 0.6 },
  /** People have so many more repetitions left than they say, give or take. */
  reserve: { bias: 0.95, spread: 0.7, spreadPerRepLeft: 0.25, spreadPerRepAbove12: 0.15 },
  /** Day-to-day standard deviation of ln(one-rep max). */
  day: 0.025,
  /** Share of sets that were counted, loaded or noted wrongly, and how wide those lie. */
  slip: { share: 0.05, times: 4, anything: 0.005 },
  /** Doubt of a known pace: in ln kappa per |ln(seconds / 3)|, and in the load per second off 3. */
  pace: { kappa: 0.12, load: 0.01, loadMost: 0.07, outsideKappa: 0.6 },
  /** Doubt when nobody knows the pace: in ln kappa and in the load. */
  unknownPace: { kappa: 0.22, load: 0.03 },
  /** Doubt of a stated capacity, as a share of what is missing from 1. */
  capacity: 0.2,
} as const;
