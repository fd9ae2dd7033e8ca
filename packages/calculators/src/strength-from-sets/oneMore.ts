import type { Band } from '@windlass/core/basis';
import {
  forecastReps,
  oneRepMaxKg,
  type PerformedSet,
  type StrengthPosterior,
  strengthAfter,
} from '@windlass/core/strength';

/** What would be believed after one more set. */
export interface OneMore {
  readonly reps: number;
  readonly max: Band;
}

/** The belief after the newest set's load once more today, to failure, at few, likely and many reps. */
export function oneMore(belief: StrengthPosterior, newest: PerformedSet): readonly OneMore[] {
  const { load, secondsPerRep } = newest;
  const pace = secondsPerRep === undefined ? {} : { secondsPerRep };
  const { low, likely, high } = forecastReps(belief, { load, ...pace }).reps;
  const counts = [...new Set([low, likely, high].map((reps) => Math.min(200, Math.round(reps))))];
  return counts.map((reps) => {
    const set = { load, reps, end: { kind: 'failure' }, day: 0, ...pace } as const;
    return { reps, max: oneRepMaxKg(strengthAfter(belief, { sets: [set], today: 0 })) };
  });
}
