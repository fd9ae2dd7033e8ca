import { requireNumber } from '../basis/index.ts';
import { comparePhase } from './comparePhase.ts';
import { type MeasuredPhase, measuredPhases, sumSeconds } from './measuredPhases.ts';
import { phasesFrom } from './phases.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import { type LoadTiming, secondsUnderLoad } from './secondsUnderLoad.ts';
import type { Tempo } from './Tempo.ts';
import type { RepDone, TempoComparison } from './TempoComparison.ts';

/** How what was done is compared. */
export interface CompareTempoOptions extends LoadTiming {
  /** How far a phase may be from what was asked, in seconds; 0.5 when left out, half a count. */
  readonly toleranceSeconds?: number;
}

/**
 * What was done against the tempo that was asked for: each phase over the set, each repetition,
 * the seconds of the set and the seconds under load.
 *
 * A lift asked for as `X` is never off; it counts as its stated seconds in what was asked and as
 * measured in what was done. With the last pause left out, the end of the last repetition is not
 * looked at. No repetitions give `nothing-done`.
 *
 * @param done one entry a repetition, 0 to 600 seconds a phase.
 * @throws RangeError for other seconds, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { compareTempo } from '@windlass/core/tempo';
 * const asked = { lowerSeconds: 4, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 0 } as const;
 * const rep = { lowerSeconds: 4.1, pauseAfterLowerSeconds: 0, liftSeconds: 1.5, pauseAfterLiftSeconds: 0 };
 * const compared = compareTempo(asked, [rep, { ...rep, lowerSeconds: 2.5 }], { lastPause: 'left-out' });
 * compared.kind === 'compared' && compared.reps.map((done) => done.phasesOff); // [[], ['lower']]
 * compared.kind === 'compared' && compared.set; // { askedSeconds: 10, doneSeconds: 9.6 }
 * ```
 */
export function compareTempo(
  asked: Tempo,
  done: readonly RepDone[],
  options: CompareTempoOptions,
): TempoComparison {
  const { startsWith = 'lower', restingPauses = [], toleranceSeconds = 0.5 } = options;
  requireNumber('compareTempo', 'toleranceSeconds', toleranceSeconds, 0, 10);
  const askedSeconds = secondsPerSet(asked, done.length, options);
  if (done.length === 0) return { kind: 'nothing-done' };
  const measured = measuredPhases(asked, done, options);
  const loaded = measured.filter(({ phase }) => !restingPauses.some((pause) => pause === phase));
  return {
    kind: 'compared',
    phases: phasesFrom(startsWith)
      .map((phase) => ({ phase, own: measured.filter((one) => one.phase === phase) }))
      .filter(({ own }) => own.length > 0)
      .map(({ phase, own }) => comparePhase(asked, phase, own)),
    reps: done.map((_, index) => {
      const ofRep = (phases: readonly MeasuredPhase[]) =>
        phases.filter((one) => one.rep === index + 1);
      return {
        rep: index + 1,
        seconds: sumSeconds(ofRep(measured)),
        secondsUnderLoad: sumSeconds(ofRep(loaded)),
        phasesOff: ofRep(measured)
          .filter(({ deviation }) => isOff(deviation, toleranceSeconds))
          .map(({ phase }) => phase),
      };
    }),
    set: { askedSeconds, doneSeconds: sumSeconds(measured) },
    underLoad: {
      askedSeconds: secondsUnderLoad(asked, done.length, options),
      doneSeconds: sumSeconds(loaded),
    },
  };
}

function isOff(deviation: number | 'X', toleranceSeconds: number): boolean {
  return deviation !== 'X' && Math.abs(deviation) > toleranceSeconds * 1000;
}
