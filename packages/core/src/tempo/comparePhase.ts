import { type MeasuredPhase, sumSeconds } from './measuredPhases.ts';
import { phaseField } from './phases.ts';
import type { Tempo, TempoPhase } from './Tempo.ts';
import type { PhaseComparison } from './TempoComparison.ts';

/** One phase over all repetitions in which it was measured, at least one. */
export function comparePhase(
  asked: Tempo,
  phase: TempoPhase,
  measured: readonly MeasuredPhase[],
): PhaseComparison {
  const lengths = measured.map((one) => one.milliseconds);
  const deviations = measured.map((one) => one.deviation);
  return {
    phase,
    asked: asked[phaseField[phase]],
    shortestSeconds: Math.min(...lengths) / 1000,
    meanSeconds: sumSeconds(measured) / measured.length,
    longestSeconds: Math.max(...lengths) / 1000,
    deviationSeconds: deviations.includes('X')
      ? 'X'
      : deviations.map((deviation) => Number(deviation) / 1000),
  };
}
