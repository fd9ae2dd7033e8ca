import { phaseField, phasesInOrder } from './phases.ts';
import { requireTempo } from './requireTempo.ts';
import type { Tempo, TempoOrder } from './Tempo.ts';

/** How {@link formatTempo} writes a tempo. */
export interface FormatTempoOptions {
  /** Which number comes first; `lower-first` when left out. */
  readonly order?: TempoOrder;
  /**
   * What stands between the parts; `-` when left out. `none` writes `30X0`, and falls back to `-`
   * where a part is not one digit.
   */
  readonly separator?: '-' | '/' | ':' | ' ' | 'none';
}

/**
 * A tempo as text, always with all four parts; {@link parseTempo} with the same order reads it back.
 *
 * @throws RangeError for a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { formatTempo } from '@windlass/core/tempo';
 * const tempo = { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 1 } as const;
 * formatTempo(tempo); // '3-0-X-1'
 * formatTempo(tempo, { separator: 'none' }); // '30X1'
 * formatTempo(tempo, { order: 'lift-first' }); // 'X-1-3-0'
 * ```
 */
export function formatTempo(tempo: Tempo, options: FormatTempoOptions = {}): string {
  const { order = 'lower-first', separator = '-' } = options;
  requireTempo('formatTempo', tempo);
  const parts = phasesInOrder(order).map((phase) => String(tempo[phaseField[phase]]));
  if (separator !== 'none') return parts.join(separator);
  return parts.join(parts.every((part) => part.length === 1) ? '' : '-');
}
