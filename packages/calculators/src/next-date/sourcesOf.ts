import type { Source } from '@windlass/core/basis';
import { type MuscleReadiness, recoveryModel } from '@windlass/core/recovery';
import { onceById } from '../shared/onceById.ts';

/** What the hours rest on, and what each report does. */
export function sourcesOf(muscles: readonly MuscleReadiness[]): readonly Source[] {
  const { fitted, indirect, pastFailure, familiarity, regions, spread } = recoveryModel;
  const parts = [fitted, indirect, pastFailure, familiarity, regions, spread];
  const all = [
    ...parts.map(({ source }) => source),
    ...muscles.flatMap(({ effects }) => effects.flatMap(({ sources }) => sources)),
  ];
  return onceById(all);
}
