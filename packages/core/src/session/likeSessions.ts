import { findExercise, type Movement } from '../anatomy/index.ts';
import { dayNumber } from '../recovery/dayNumber.ts';
import type { Client } from './Client.ts';

/** Older sessions no longer make work familiar; `TrainedSets` counts the last six months. */
const SIX_MONTHS_DAYS = 183;

/**
 * Days since each earlier session with the same movement, from the client's log; nothing where no
 * log is there to tell.
 */
export function likeSessions(
  movement: Movement,
  { sets }: Pick<Client, 'sets'>,
  date: string,
): readonly number[] | undefined {
  if (sets.length === 0) return undefined;
  const days = sets
    .filter(({ exercise }) => {
      const found = findExercise(exercise);
      return found.kind === 'found' && found.exercise.movement === movement;
    })
    .map((set) => dayNumber(date) - dayNumber(set.date))
    .filter((ago) => ago >= 0 && ago <= SIX_MONTHS_DAYS);
  return [...new Set(days)];
}
