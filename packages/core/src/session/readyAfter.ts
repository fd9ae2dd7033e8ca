import type { Exercise } from '../anatomy/index.ts';
import { dateOfDay, dayNumber } from '../recovery/dayNumber.ts';
import { readiness } from '../recovery/readiness.ts';
import type { TrainedSets, TrainingStatus } from '../recovery/TrainedSets.ts';
import type { Client } from './Client.ts';
import { likeSessions } from './likeSessions.ts';
import type { NextSession, NextTime } from './SessionPlan.ts';

/** Sets of one exercise that ended alike: planned, or as they were done. */
export interface LiftWork
  extends Pick<TrainedSets, 'sets' | 'repsInReserve' | 'stagesPastFailure'> {
  readonly exercise: Pick<Exercise, 'direct' | 'indirect' | 'movement'>;
}

const HOURS_PER_DAY = 24;

/**
 * When the muscles of a session are ready for as much again, by the work that was done or is
 * planned: hours from its beginning, and the first day at whose same time of day they have passed.
 *
 * The session waits for its last muscle. Work counts as new by the earlier sessions of the same
 * movement in the client's log; hours are those of `readiness` of `@windlass/core/recovery`.
 *
 * @param work of the whole session, in any order; an exercise may come more than once.
 * @param client whose experience, reports and log count.
 * @param date of the session, `YYYY-MM-DD`.
 * @returns nothing where no set was done.
 * @throws RangeError for a date that is none, and as `readiness` does.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { readyAfter } from '@windlass/core/session';
 * const found = findExercise('leg-extension');
 * const client = { name: 'Mechanic', experience: 'experienced', alone: false, health: {}, sets: [] } as const;
 * const exercise = found.kind === 'found' ? found.exercise : undefined;
 * const work = exercise ? [{ exercise, sets: 2 }] : [];
 * readyAfter(work, client, '2027-03-17')?.likely.date; // '2027-03-19'
 * readyAfter([], client, '2027-03-17'); // undefined
 * ```
 */
export function readyAfter(
  work: readonly LiftWork[],
  client: Pick<Client, 'experience' | 'reports' | 'sets'>,
  date: string,
): Pick<NextSession, 'earliest' | 'likely' | 'cautious' | 'muscles'> | undefined {
  const muscles = readiness(
    [{ hoursAgo: 0, work: work.map((one) => ({ ...one, ...familiarity(one, client, date) })) }],
    {
      status: statusOf[client.experience],
      ...(client.reports && { reports: client.reports }),
    },
  );
  if (muscles.length === 0) return undefined;
  const last = (time: 'earliest' | 'likely' | 'cautious'): NextTime => {
    const hours = Math.max(...muscles.map(({ readyIn }) => readyIn[time]));
    return { hours, date: dateOfDay(dayNumber(date) + Math.ceil(hours / HOURS_PER_DAY)) };
  };
  return {
    earliest: last('earliest'),
    likely: last('likely'),
    cautious: last('cautious'),
    muscles,
  };
}

const statusOf: Readonly<Record<Client['experience'], TrainingStatus>> = {
  new: 'new',
  some: 'recreational',
  experienced: 'trained',
};

function familiarity({ exercise }: LiftWork, client: Pick<Client, 'sets'>, date: string) {
  const like = likeSessions(exercise.movement, client, date);
  return like === undefined ? {} : { likeSessionsDaysAgo: like };
}
