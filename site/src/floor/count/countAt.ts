import type { RepPhase } from '@windlass/core/tempo';

/** Where a count stands at a moment. */
export type CountNow =
  | { readonly kind: 'lead-in'; readonly secondsLeft: number }
  | {
      readonly kind: 'rep';
      /** Repetitions that are over. */
      readonly over: number;
      /** Place of the phase in the repetition. */
      readonly place: number;
      readonly phase: RepPhase;
      readonly secondsInto: number;
      readonly secondsLeft: number;
      readonly next: RepPhase;
      /** How far the repetition is, 0 to 1. */
      readonly share: number;
    }
  /** All repetitions that were to be counted are over. */
  | { readonly kind: 'over'; readonly over: number };

/** Milliseconds of one repetition. */
export function repMilliseconds(phases: readonly RepPhase[]): number {
  return phases.reduce((sum, { seconds }) => sum + Math.round(seconds * 1000), 0);
}

/**
 * Where a count stands so many milliseconds after its first repetition began.
 *
 * @param phases of one repetition, from `phasesOfRep`.
 * @param sinceMs below 0 in the lead-in.
 * @param most repetitions that are counted.
 */
export function countAt(phases: readonly RepPhase[], sinceMs: number, most: number): CountNow {
  if (sinceMs < 0) return { kind: 'lead-in', secondsLeft: -sinceMs / 1000 };
  const whole = repMilliseconds(phases);
  const over = Math.floor(sinceMs / whole);
  if (over >= most) return { kind: 'over', over: most };
  const into = sinceMs - over * whole;
  let from = 0;
  for (const [place, phase] of phases.entries()) {
    const to = from + Math.round(phase.seconds * 1000);
    if (into < to) {
      return {
        kind: 'rep',
        over,
        place,
        phase,
        secondsInto: (into - from) / 1000,
        secondsLeft: (to - into) / 1000,
        next: phases[(place + 1) % phases.length] ?? phase,
        share: into / whole,
      };
    }
    from = to;
  }
  throw new RangeError('countAt: a repetition has at least one phase');
}
