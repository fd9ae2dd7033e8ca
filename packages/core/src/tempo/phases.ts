import type { RepStart, Tempo, TempoOrder, TempoPause, TempoPhase } from './Tempo.ts';

/** The field of a tempo that holds a phase. */
export const phaseField = {
  lower: 'lowerSeconds',
  'pause-after-lower': 'pauseAfterLowerSeconds',
  lift: 'liftSeconds',
  'pause-after-lift': 'pauseAfterLiftSeconds',
} as const satisfies Record<TempoPhase, keyof Tempo>;

/** A phase in the middle of a sentence. */
export const phaseWords: Readonly<Record<TempoPhase, string>> = {
  lower: 'lowering',
  'pause-after-lower': 'pause after lowering',
  lift: 'lift',
  'pause-after-lift': 'pause after lifting',
};

const fromLower: readonly TempoPhase[] = ['lower', 'pause-after-lower', 'lift', 'pause-after-lift'];
const fromLift: readonly TempoPhase[] = ['lift', 'pause-after-lift', 'lower', 'pause-after-lower'];

/** Phases as a written tempo names them. */
export function phasesInOrder(order: TempoOrder): readonly TempoPhase[] {
  return order === 'lower-first' ? fromLower : fromLift;
}

/** Phases as they happen in a repetition. */
export function phasesFrom(start: RepStart): readonly TempoPhase[] {
  return start === 'lower' ? fromLower : fromLift;
}

/** The pause that a repetition ends with. */
export function pauseAtEnd(start: RepStart): TempoPause {
  return start === 'lower' ? 'pause-after-lift' : 'pause-after-lower';
}
