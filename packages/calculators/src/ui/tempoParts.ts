import { formatTempo, parseTempo, type TempoOrder, type TempoPhase } from '@windlass/core/tempo';

/** One part of a written tempo, for a control to step. */
export interface TempoPart {
  readonly phase: TempoPhase;
  readonly text: string;
}

const PHASES: Readonly<Record<TempoOrder, readonly TempoPhase[]>> = {
  'lower-first': ['lower', 'pause-after-lower', 'lift', 'pause-after-lift'],
  'lift-first': ['lift', 'pause-after-lift', 'lower', 'pause-after-lower'],
};

/** The four parts of a tempo text in the order they are written; zeros where it cannot be read. */
export function tempoParts(text: string, order: TempoOrder): readonly TempoPart[] {
  const read = parseTempo(text, { order });
  const parts = read.ok ? formatTempo(read.value.tempo, { order }).split('-') : [];
  return PHASES[order].map((phase, place) => ({ phase, text: parts[place] ?? '0' }));
}

/** The tempo text with one part a second longer or shorter. A fast lift (X) counts as below one second. */
export function stepTempoPart(
  text: string,
  order: TempoOrder,
  place: number,
  direction: 1 | -1,
): string {
  const parts = tempoParts(text, order).map((part) => part.text);
  const part = parts[place] ?? '0';
  const seconds = part === 'X' ? 0 : Number(part);
  const next = Math.max(0, direction === 1 ? Math.floor(seconds) + 1 : Math.ceil(seconds) - 1);
  return parts.with(place, String(Math.min(60, next))).join('-');
}
