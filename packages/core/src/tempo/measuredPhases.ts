import { requireNumber } from '../basis/index.ts';
import { pauseAtEnd, phaseField, phasesFrom } from './phases.ts';
import type { SetTiming } from './SetTiming.ts';
import type { Tempo, TempoPhase } from './Tempo.ts';
import type { RepDone } from './TempoComparison.ts';

/** One phase of one repetition, done. Whole milliseconds. */
export interface MeasuredPhase {
  readonly rep: number;
  readonly phase: TempoPhase;
  readonly milliseconds: number;
  /** Done less asked; `X` where no number of seconds was asked. */
  readonly deviation: number | 'X';
}

/** Every phase that counts, repetition by repetition. */
export function measuredPhases(
  asked: Tempo,
  done: readonly RepDone[],
  { startsWith = 'lower', lastPause }: SetTiming,
): readonly MeasuredPhase[] {
  return done.flatMap((rep, index) => {
    const isCut = lastPause === 'left-out' && index === done.length - 1;
    return phasesFrom(startsWith)
      .filter((phase) => !isCut || phase !== pauseAtEnd(startsWith))
      .map((phase) => {
        const seconds = rep[phaseField[phase]];
        requireNumber('compareTempo', `${phaseField[phase]} of rep ${index + 1}`, seconds, 0, 600);
        const milliseconds = Math.round(seconds * 1000);
        const wanted = asked[phaseField[phase]];
        const deviation = wanted === 'X' ? wanted : milliseconds - Math.round(wanted * 1000);
        return { rep: index + 1, phase, milliseconds, deviation };
      });
  });
}

/** The time they took together. */
export function sumSeconds(measured: readonly MeasuredPhase[]): number {
  return measured.reduce((sum, { milliseconds }) => sum + milliseconds, 0) / 1000;
}
