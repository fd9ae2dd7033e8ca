import { requireNumber } from '../basis/index.ts';
import { phaseField } from './phases.ts';
import { requireTempo } from './requireTempo.ts';
import type { RepTiming, Tempo, TempoPhase } from './Tempo.ts';
import { FAST_LIFT_SECONDS } from './tempoLimits.ts';

/** Whole milliseconds of each phase, with an `X` lift counted as the timing says. */
export function phaseMilliseconds(
  where: string,
  tempo: Tempo,
  { fastLiftSeconds = FAST_LIFT_SECONDS }: RepTiming,
): Readonly<Record<TempoPhase, number>> {
  requireTempo(where, tempo);
  requireNumber(where, 'fastLiftSeconds', fastLiftSeconds, 0.2, 1);
  const of = (phase: TempoPhase): number => {
    const seconds = tempo[phaseField[phase]];
    return Math.round((seconds === 'X' ? fastLiftSeconds : seconds) * 1000);
  };
  return {
    lower: of('lower'),
    'pause-after-lower': of('pause-after-lower'),
    lift: of('lift'),
    'pause-after-lift': of('pause-after-lift'),
  };
}
