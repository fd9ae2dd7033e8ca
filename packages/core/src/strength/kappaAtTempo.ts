import { type Band, requireNumber } from '../basis/index.ts';
import { tempoLaw } from './tempoLaw.ts';

/** Kappa at a pace, and whether the pace lies where the law was seen to hold. */
export interface KappaAtTempo {
  /** `within` 2 to 10 s a repetition; `faster` and `slower` lie outside and their band is wide. */
  readonly kind: 'within' | 'faster' | 'slower';
  readonly kappa: Band;
}

/**
 * The endurance constant at another pace: `kappa * (secondsPerRep / 3)^-0.55`.
 *
 * Slower repetitions are fewer, and the set lasts longer. The band spans the exponents seen in
 * published comparisons (0.40 to 0.79). Slower than 10 s the law promises about twice what was
 * counted (10 s up, 10 s down), so there the band reaches down to 0, a single repetition; faster
 * than 2 s it reaches down to no gain at all. Take `kappa.likely` only when `kind` is `within`.
 *
 * @param kappa endurance constant at 3 seconds a repetition, above 0.
 * @param secondsPerRep seconds under load per repetition, 0.2 to 120.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kappaAtTempo } from '@windlass/core/strength';
 * kappaAtTempo(40, 3).kappa.likely; // 40
 * kappaAtTempo(40, 20).kind; // 'slower'
 * kappaAtTempo(40, 20).kappa.low; // 0
 * ```
 */
export function kappaAtTempo(kappa: number, secondsPerRep: number): KappaAtTempo {
  requireNumber('kappaAtTempo', 'kappa', kappa, Number.MIN_VALUE);
  requireNumber('kappaAtTempo', 'secondsPerRep', secondsPerRep, 0.2, 120);
  const at = (exponent: number) => kappa * (secondsPerRep / tempoLaw.referenceSeconds) ** -exponent;
  const ends = tempoLaw.observedExponents.map(at).sort((a, b) => a - b) as [number, number];
  const likely = at(tempoLaw.exponent);
  const [fastest, slowest] = tempoLaw.rangeSeconds;
  if (secondsPerRep < fastest) {
    return { kind: 'faster', kappa: { low: kappa, likely, high: ends[1], level: 0.8 } };
  }
  if (secondsPerRep > slowest) {
    return { kind: 'slower', kappa: { low: 0, likely, high: ends[1], level: 0.8 } };
  }
  return { kind: 'within', kappa: { low: ends[0], likely, high: ends[1], level: 0.8 } };
}
