import { good, type Outcome } from '@windlass/core/basis';
import { parseTempo, type Tempo } from '@windlass/core/tempo';
import type { TempoField, Texts } from './Field.ts';

/** A tempo, read in the order that the form asks for. */
export function readTempo(field: TempoField, text: string, texts: Texts): Outcome<Tempo> {
  const isLiftFirst = field.orderFrom !== undefined && texts[field.orderFrom] === 'lift-first';
  const read = parseTempo(text, { order: isLiftFirst ? 'lift-first' : 'lower-first' });
  return read.ok ? good(read.value.tempo) : read;
}
