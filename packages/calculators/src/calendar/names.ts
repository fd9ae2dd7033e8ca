import type { MuscleId } from '@windlass/core/anatomy';
import { inSentence } from '@windlass/core/basis';
import type { CalendarRequest } from '@windlass/core/recovery';
import { muscleNames } from '../precomputed/pairLifts.ts';
import { said } from './words.ts';

/** Muscles in words, as in a sentence. */
export function muscleList(muscles: readonly string[]): string {
  return said.list(muscles.map((muscle) => inSentence(muscleNames[muscle as MuscleId] ?? muscle)));
}

/** What a session of the request is called. */
export function nameOfSession({ sessions }: CalendarRequest, id: string): string {
  return sessions.find((session) => session.id === id)?.name ?? id;
}
