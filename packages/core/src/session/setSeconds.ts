import { secondsPerSet } from '../tempo/index.ts';
import type { Lift } from './liftOf.ts';

/** How long a set takes at its tempo, with both sides of a one-sided lift; the last pause counts. */
export function setSeconds({ intent, exercise }: Lift, reps: number): number {
  const sides = exercise.sides === 'one' ? 2 : 1;
  const timing = { lastPause: 'counted', startsWith: exercise.startsWith } as const;
  return sides * secondsPerSet(intent.tempo, Math.round(reps), timing);
}
