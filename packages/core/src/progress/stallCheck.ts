import { generalCurve, type RepCurve } from '../strength/index.ts';
import { chanceOfRate } from './chanceOfRate.ts';
import { comparableSessions } from './comparableSessions.ts';
import type { LiftSession } from './LiftSession.ts';
import { type ProgressRules, progressRules } from './ProgressRules.ts';
import { strengthTrend } from './strengthTrend.ts';
import { topSets } from './topSets.ts';

/** What every session was to reach. */
export interface SetTarget {
  readonly sets: number;
  readonly reps: number;
}

/** Sessions, and what they were to reach. */
export interface StallQuestion {
  /** Oldest first, of one exercise. */
  readonly sessions: readonly LiftSession[];
  readonly target: SetTarget;
  readonly curve?: RepCurve;
  readonly rules?: Partial<ProgressRules>;
}

/** Whether strength on a lift stands still, as far as these sessions can say. */
export interface StallAnswer {
  readonly kind:
    | 'stall'
    /** Missed often enough, yet strength is more likely rising than not. */
    | 'missed-but-rising'
    /** One or two poor sessions say nothing yet. */
    | 'too-few-misses'
    | 'on-target';
  /** Comparable sessions under the target in a row, up to the last. */
  readonly misses: number;
  /** Comparable sessions that were looked at. */
  readonly sessions: number;
  /** Probability that strength gains less than the worthwhile rate; none below three sessions. */
  readonly chanceOfNoGain: number | undefined;
  /** A sentence to show. */
  readonly says: string;
}

/**
 * Whether a run of poor sessions is a stall: a statement of probability, not of three bad days.
 *
 * Only comparable sessions count (the same top load, tempo and rests; none tagged as travel, light
 * or test). It takes as many misses in a row as the rules say (three), and a trend over these
 * sessions that more likely than not gains less than is worthwhile.
 *
 * @returns `on-target` when the last session met its target or there is none.
 * @example
 * ```ts
 * import { stallCheck } from '@windlass/core/progress';
 * stallCheck({ sessions: [], target: { sets: 3, reps: 5 } }).kind; // 'on-target'
 * ```
 */
export function stallCheck(question: StallQuestion): StallAnswer {
  const { target, curve = generalCurve } = question;
  const rules = { ...progressRules, ...question.rules };
  const sessions = comparableSessions(question.sessions);
  const met = sessions.map((session) => meetsTarget(session, target));
  const misses = sessions.length - 1 - met.lastIndexOf(true);
  const trend = strengthTrend(sessions, { curve, by: 'mean-of-top-sets' });
  const chanceOfNoGain =
    trend.kind === 'trend' ? 1 - chanceOfRate(trend, rules.worthwhilePercentPerWeek) : undefined;
  const kind =
    misses === 0
      ? 'on-target'
      : misses < rules.missesForStall || chanceOfNoGain === undefined
        ? 'too-few-misses'
        : chanceOfNoGain >= rules.stallChance
          ? 'stall'
          : 'missed-but-rising';
  return {
    kind,
    misses,
    sessions: sessions.length,
    chanceOfNoGain,
    says: words(kind, misses, chanceOfNoGain),
  };
}

/** Whether every set that was asked for had its repetitions. */
function meetsTarget(session: LiftSession, target: SetTarget): boolean {
  const { sets } = topSets(session);
  return sets.filter(({ reps }) => reps >= target.reps).length >= target.sets;
}

function words(kind: StallAnswer['kind'], misses: number, chance = 0): string {
  const percent = `${Math.round(100 * chance)} %`;
  switch (kind) {
    case 'on-target':
      return 'The last session met its target.';
    case 'too-few-misses':
      return `${misses} comparable ${misses === 1 ? 'session' : 'sessions'} under the target: too few to tell a stall from an off day.`;
    case 'missed-but-rising':
      return `${misses} sessions under the target, but strength more likely rises than not: the chance of no worthwhile gain is ${percent}.`;
    case 'stall':
      return `${misses} comparable sessions under the target; the chance that strength gains nothing worthwhile is ${percent}. Sleep, food and illness come before the programme.`;
  }
}
