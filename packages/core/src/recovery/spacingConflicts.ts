import type { MuscleGap, RotaSession, TimedSession } from './Calendar.ts';
import { gapsOf, type Moment, margin } from './calendar/gapsOf.ts';
import { wallTimeAfter } from './wallTimeAfter.ts';
import { minutesOf } from './zonedTime.ts';

/** Sessions as they stand in somebody's week. */
export interface SpacingQuestion {
  readonly zone: string;
  /** What each session trains. */
  readonly rotation: readonly RotaSession[];
  /** In any order. */
  readonly sessions: readonly TimedSession[];
}

/** A session that trains muscles before they are ready. */
export interface SpacingConflict {
  readonly session: string;
  readonly start: string;
  /** The muscles concerned, the one that lacks most first. */
  readonly gaps: readonly [MuscleGap, ...MuscleGap[]];
  /** When all of them are ready: wall time. */
  readonly earliest: string;
}

/**
 * The sessions that come too early for a muscle they share with an earlier one, whatever the
 * sessions are called.
 *
 * @returns in time order; empty when every muscle has had its hours.
 * @throws RangeError for a time, zone or session id that does not exist.
 * @example
 * ```ts
 * import { spacingConflicts } from '@windlass/core/recovery';
 * const muscles = { 'front-deltoid': 48, 'triceps-long-head': 48 };
 * const [tooEarly] = spacingConflicts({
 *   zone: 'Europe/Oslo',
 *   rotation: [
 *     { id: 'chest', name: 'Chest', minutes: 60, muscles: { ...muscles, chest: 48 } },
 *     { id: 'shoulders', name: 'Shoulders', minutes: 60, muscles },
 *   ],
 *   sessions: [
 *     { session: 'chest', start: '2026-03-02T18:00' },
 *     { session: 'shoulders', start: '2026-03-03T18:00' },
 *   ],
 * });
 * tooEarly?.earliest; // '2026-03-04T18:00'
 * tooEarly?.gaps.map(({ muscle }) => muscle); // ['front-deltoid', 'triceps-long-head']
 * ```
 */
export function spacingConflicts(question: SpacingQuestion): readonly SpacingConflict[] {
  const { zone, rotation } = question;
  const request = { zone, sessions: rotation };
  const moments = question.sessions
    .map(({ session, start, light = false }): Moment & { id: string } => ({
      id: session,
      session: rotation.findIndex(({ id }) => id === session),
      start,
      light,
    }))
    .sort((a, b) => minutesOf(a.start, zone) - minutesOf(b.start, zone));
  return moments.flatMap((moment, index) => {
    if (moment.session < 0) {
      throw new RangeError(`spacingConflicts: no session of the rotation has the id ${moment.id}`);
    }
    const gaps = gapsOf(request, moments.slice(0, index), moment);
    const [worst, ...others] = gaps.filter((gap) => margin(gap) < 0);
    if (worst === undefined) return [];
    return [
      {
        session: moment.id,
        start: moment.start,
        gaps: [worst, ...others],
        earliest: wallTimeAfter(worst.lastTrained, worst.hoursNeeded, zone),
      },
    ];
  });
}
