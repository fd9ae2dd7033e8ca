import { checkTempo, formatTempo, type TempoOrder } from '@windlass/core/tempo';
import { getAt, isRecord, type Json, type Path, textAt } from './tree.ts';

/** The text of a tempo as it was written, whichever of the three forms of a plan file it has. */
export function tempoTextAt(draft: Json, path: Path): string {
  const value = getAt(draft, path);
  if (!isRecord(value) || typeof value.code === 'string') return textAt(draft, path);
  const tempo = checkTempo({
    lowerSeconds: Number(value.lowerSeconds),
    pauseAfterLowerSeconds: Number(value.pauseAfterLowerSeconds),
    liftSeconds: value.liftSeconds === 'X' ? 'X' : Number(value.liftSeconds),
    pauseAfterLiftSeconds: Number(value.pauseAfterLiftSeconds),
  });
  return tempo.ok ? formatTempo(tempo.value) : '';
}

/** Which phase of a tempo was written first. */
export function tempoOrderAt(draft: Json, path: Path): TempoOrder {
  return textAt(draft, [...path, 'order']) === 'lift-first' ? 'lift-first' : 'lower-first';
}

/** A tempo as a plan file holds it: plain text where lowering comes first, else with its order. */
export function tempoFile(code: string, order: TempoOrder): Json {
  return order === 'lower-first' ? code : { code, order };
}
