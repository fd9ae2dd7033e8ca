import { evidenceFigures } from '../evidenceFigures.ts';
import { tempoLaw } from '../tempoLaw.ts';

/** What a pace does to kappa, and how much doubt it brings. */
export interface PaceDoubt {
  /** Kappa at this pace divided by kappa at the reference pace. */
  readonly factor: number;
  /** Standard deviation of ln kappa. */
  readonly kappaSd: number;
  /** Standard deviation of the load's logarithm. */
  readonly loadSd: number;
}

/** The pace law with its doubt; a pace that nobody knows counts as the reference, with more doubt. */
export function paceDoubt(secondsPerRep: number | undefined): PaceDoubt {
  const { referenceSeconds, exponent, rangeSeconds } = tempoLaw;
  if (secondsPerRep === undefined) {
    const { kappa, load } = evidenceFigures.unknownPace;
    return { factor: 1, kappaSd: kappa, loadSd: load };
  }
  const { kappa, load, loadMost, outsideKappa } = evidenceFigures.pace;
  const stretch = secondsPerRep / referenceSeconds;
  const outside = secondsPerRep < rangeSeconds[0] || secondsPerRep > rangeSeconds[1];
  return {
    factor: stretch ** -exponent,
    kappaSd: Math.hypot(kappa * Math.log(stretch), outside ? outsideKappa : 0),
    loadSd: Math.min(loadMost, load * Math.abs(secondsPerRep - referenceSeconds)),
  };
}
