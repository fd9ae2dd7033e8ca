import type { Exercise } from '../anatomy/index.ts';
import { dayNumber, type TrainedSets } from '../recovery/index.ts';
import type { LoggedSet } from './LoggedSet.ts';

/** What is read of an exercise to count it as work. */
export type TrainedExercise = Pick<Exercise, 'id' | 'movement' | 'direct' | 'indirect'>;

/** All that was trained on one date, as recovery counts it. */
export interface TrainedSession {
  readonly date: string;
  readonly work: readonly TrainedSets[];
}

/** A log as recovery counts it. */
export interface TrainedSessions {
  /** Oldest first. */
  readonly sessions: readonly TrainedSession[];
  /** Names in the log that are no known exercise: their sets are not counted. */
  readonly unknown: readonly string[];
}

/** Work is like other work of the same movement in so many days. */
const LIKE_WORK_DAYS = 183;
/** Before a log is so old, nobody can say from it what is new to the person. */
const KNOWN_AFTER_DAYS = 60;

/**
 * A log as the work that `readiness` and `muscleHours` of `@windlass/core/recovery` take: sets with
 * how they ended, and how often like work (the same movement) was done before.
 *
 * A set whose end was not noted is taken to failure. In the first 60 days of a log the earlier
 * sessions are left out, because what came before it is not known; the training status decides then.
 *
 * @returns empty for an empty log.
 * @throws RangeError for a date that does not exist.
 * @example
 * ```ts
 * import { exercises } from '@windlass/core/anatomy';
 * import { trainedSessions } from '@windlass/core/progress';
 * import { muscleDose } from '@windlass/core/recovery';
 * const set = {
 *   date: '2026-03-04', exercise: 'leg-extension', set: 1, counts: 'stack',
 *   load: { value: 40, unit: 'kg' }, reps: 9,
 * } as const;
 * const { sessions } = trainedSessions([set, { ...set, set: 2 }], exercises);
 * muscleDose(sessions[0]?.work ?? [])[0]?.countedSets; // 2
 * ```
 */
export function trainedSessions(
  log: readonly LoggedSet[],
  exercises: readonly TrainedExercise[],
): TrainedSessions {
  const known = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const unknown = new Set(log.map(({ exercise }) => exercise).filter((name) => !known.has(name)));
  const sets = onePerSide(log).flatMap((set) => {
    const exercise = known.get(set.exercise);
    return exercise ? [{ set, exercise }] : [];
  });
  const dates = [...new Set(sets.map(({ set }) => set.date))].sort();
  const movements = new Map<string, number[]>();
  const first = dates[0] === undefined ? 0 : dayNumber(dates[0]);
  const sessions = dates.map((date) => {
    const day = dayNumber(date);
    const onDate = sets.filter(({ set }) => set.date === date);
    const work = onDate.map(({ set, exercise }): TrainedSets => {
      const ago = (movements.get(exercise.movement) ?? [])
        .map((earlier) => day - earlier)
        .filter((days) => days <= LIKE_WORK_DAYS);
      return {
        exercise,
        sets: 1,
        repsInReserve: reserveOf(set),
        ...(day - first >= KNOWN_AFTER_DAYS ? { likeSessionsDaysAgo: ago } : {}),
      };
    });
    for (const movement of new Set(onDate.map(({ exercise }) => exercise.movement))) {
      movements.set(movement, [...(movements.get(movement) ?? []), day]);
    }
    return { date, work };
  });
  return { sessions, unknown: [...unknown].sort() };
}

function reserveOf({ end }: LoggedSet): number {
  if (end?.kind === 'reserve') return end.repsLeft;
  return end?.kind === 'more' ? end.atLeast : 0;
}

/** Both sides of a set as one: the side that went nearer to failure. */
function onePerSide(log: readonly LoggedSet[]): readonly LoggedSet[] {
  const kept = new Map<string, LoggedSet>();
  for (const [index, set] of log.entries()) {
    const key = set.side ? `${set.date}|${set.exercise}|${set.set}` : `${index}`;
    const other = kept.get(key);
    if (other === undefined || reserveOf(set) < reserveOf(other)) kept.set(key, set);
  }
  return [...kept.values()];
}
