import type { Exercise } from '../anatomy/index.ts';
import { dayNumber } from '../recovery/index.ts';
import { enduranceCurves, generalCurve } from '../strength/index.ts';
import { comparableSessions } from './comparableSessions.ts';
import { type LeftOutSet, type LiftSession, setAsideTags } from './LiftSession.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { liftSessions } from './liftSessions.ts';
import type { MovedLoadContext } from './movedLoad.ts';
import { type SideGap, sideGap } from './sideGap.ts';
import { type NoTrend, type StrengthTrend, strengthTrend } from './strengthTrend.ts';
import { type CountedExercise, type WeeklyDose, weeklyDose } from './weeklyDose.ts';

/** What is read of an exercise to review its sets. */
export type ReviewedExercise = CountedExercise &
  Pick<Exercise, 'endurance'> &
  Partial<Pick<Exercise, 'movedShare'>>;

/** The log to be reviewed, and whose it is. */
export interface ReviewQuestion {
  readonly log: readonly LoggedSet[];
  /** The exercises that the log names; others are reviewed by the general rep curve. */
  readonly exercises: readonly ReviewedExercise[];
  /** The day of the review, `YYYY-MM-DD`; later sets are passed over. */
  readonly on: string;
  readonly body?: MovedLoadContext;
  /** How many days back a trend looks; 56 when left out. */
  readonly trendDays?: number;
}

/** One exercise in a review. */
export interface LiftReview {
  readonly exercise: string;
  /** Sessions in the whole log, and those set aside by their tags. */
  readonly sessions: number;
  readonly setAside: number;
  readonly last: LiftSession;
  readonly daysSinceLast: number;
  /** Sessions with the load of last time that can be held against each other. */
  readonly comparable: number;
  /** Over the last weeks, and over the whole log. */
  readonly lately: StrengthTrend | NoTrend;
  readonly allAlong: StrengthTrend | NoTrend;
  readonly sides: SideGap | { readonly kind: 'no-sides' };
  readonly leftOut: readonly LeftOutSet[];
}

/** A log at a glance. */
export interface LogReview {
  /** The exercise trained last first. */
  readonly lifts: readonly LiftReview[];
  readonly dose: WeeklyDose;
}

/**
 * A log at a glance: for each exercise where it is going lately and all along, how long it has
 * rested, whether the sides drift apart; and the weekly sets of each muscle.
 *
 * It looks back by straight lines through the log (`strengthTrend`), which cost little; what the
 * next set will give is asked of the posterior, one exercise at a time.
 *
 * @returns no lifts for a log without sets up to that day.
 * @throws RangeError for a date that does not exist.
 * @example
 * ```ts
 * import { reviewLog } from '@windlass/core/progress';
 * reviewLog({ log: [], exercises: [], on: '2026-03-31' }).lifts; // []
 * ```
 */
export function reviewLog(question: ReviewQuestion): LogReview {
  const { exercises, on, body, trendDays = 56 } = question;
  const today = dayNumber(on);
  const log = question.log.filter(({ date }) => date <= on);
  const lifts = [...new Set(log.map(({ exercise }) => exercise))].flatMap((name) => {
    const { sessions, leftOut } = liftSessions(log, name, contextFor(name, exercises, body));
    const last = sessions.at(-1);
    if (last === undefined) return [];
    const own = sessions.filter(({ tags }) => !tags.some((tag) => setAsideTags.includes(tag)));
    const kind = exercises.find(({ id }) => id === name)?.endurance;
    const curve = kind ? enduranceCurves[kind] : generalCurve;
    return [
      {
        exercise: name,
        sessions: sessions.length,
        setAside: sessions.length - own.length,
        last,
        daysSinceLast: today - last.day,
        comparable: comparableSessions(sessions).length,
        lately: strengthTrend(
          own.filter(({ day }) => today - day <= trendDays),
          { curve },
        ),
        allAlong: strengthTrend(own, { curve }),
        sides: sideGap(own, curve),
        leftOut,
      },
    ];
  });
  return {
    lifts: lifts.sort((a, b) => b.last.day - a.last.day || (a.exercise < b.exercise ? -1 : 1)),
    dose: weeklyDose(log, exercises),
  };
}

function contextFor(
  name: string,
  exercises: readonly ReviewedExercise[],
  body: MovedLoadContext = {},
): MovedLoadContext {
  const movedShare = exercises.find(({ id }) => id === name)?.movedShare;
  return movedShare ? { ...body, movedShare } : body;
}
