import type { Source } from '@windlass/core/basis';
import { evidenceModel } from '@windlass/core/strength';
import { onceById } from '../shared/onceById.ts';
import type { EquationsResult } from './compute.ts';

/** The publications of all equations that are shown, each once, and what the own band rests on. */
export function sourcesOf({ answered, broken, curve }: EquationsResult): readonly Source[] {
  const all = [
    ...[...answered, ...broken].map(({ equation }) => equation.source),
    ...curve.sources,
    evidenceModel.repeat.source,
  ];
  return onceById(all);
}
