import { type Load, loadFromValue } from '../load/index.ts';
import { dayNumber } from '../recovery/index.ts';
import type { LeftOutSet, LiftSession, SessionSet } from './LiftSession.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { type MovedLoadContext, movedLoad } from './movedLoad.ts';

/** One exercise out of a log. */
export interface LiftSessions {
  /** Oldest first. */
  readonly sessions: readonly LiftSession[];
  readonly leftOut: readonly LeftOutSet[];
}

/**
 * The sessions of one exercise, from a log that may hold others too.
 *
 * Where the left and the right side of a set were logged apart, the set counts as what the weaker
 * side did, with the lighter of both loads, and both counts are kept. A side logged alone counts as
 * it is.
 *
 * @param exercise as it is named in the log.
 * @returns empty when the log has no set of it.
 * @throws RangeError for a date that does not exist.
 * @example
 * ```ts
 * import { liftSessions } from '@windlass/core/progress';
 * const set = {
 *   date: '2026-03-02', exercise: 'one-arm-dumbbell-row', set: 1, counts: 'each-hand',
 *   load: { value: 70, unit: 'lb' },
 * } as const;
 * const { sessions } = liftSessions(
 *   [{ ...set, side: 'right', reps: 10 }, { ...set, side: 'left', reps: 8 }],
 *   'one-arm-dumbbell-row',
 * );
 * sessions[0]?.sets[0].reps; // 8
 * sessions[0]?.sets[0].sides; // { left: 8, right: 10 }
 * ```
 */
export function liftSessions(
  log: readonly LoggedSet[],
  exercise: string,
  context: MovedLoadContext = {},
): LiftSessions {
  const leftOut: LeftOutSet[] = [];
  const dates = new Map<string, Map<string, { logged: LoggedSet; set: SessionSet }>>();
  for (const logged of log) {
    if (logged.exercise !== exercise) continue;
    const moved = movedLoad(logged, context);
    if (moved.kind !== 'load') {
      leftOut.push({ set: logged, reason: moved.kind });
      continue;
    }
    const sets = dates.get(logged.date) ?? new Map();
    dates.set(logged.date, sets);
    const own = sessionSet(logged, moved.load);
    const key = logged.side ? `${logged.set}` : `${logged.set}|${sets.size}`;
    const other = sets.get(key);
    sets.set(key, { logged, set: other ? bothSides(other, { logged, set: own }) : own });
  }
  const sessions = [...dates.entries()]
    .map(([date, sets]) => sessionOf(date, [...sets.values()]))
    .sort((a, b) => a.day - b.day);
  return { sessions, leftOut };
}

interface OneSide {
  readonly logged: LoggedSet;
  readonly set: SessionSet;
}

function sessionSet(logged: LoggedSet, load: SessionSet['load']): SessionSet {
  const { reps, end, tempo, restSeconds } = logged;
  return {
    load,
    shown: loadFromValue(logged.load),
    reps,
    ...(end ? { end } : {}),
    ...(tempo === undefined ? {} : { tempo }),
    ...(restSeconds === undefined ? {} : { restSeconds }),
  };
}

function bothSides(a: OneSide, b: OneSide): SessionSet {
  const [left, right] = a.logged.side === 'left' ? [a, b] : [b, a];
  const weaker = left.set.reps <= right.set.reps ? left.set : right.set;
  const load = Math.min(left.set.load, right.set.load) as Load;
  const shown = Math.min(left.set.shown, right.set.shown) as Load;
  return { ...weaker, load, shown, sides: { left: left.set.reps, right: right.set.reps } };
}

function sessionOf(date: string, sides: readonly OneSide[]): LiftSession {
  const sets = [...sides].sort((a, b) => a.logged.set - b.logged.set).map(({ set }) => set) as [
    SessionSet,
    ...SessionSet[],
  ];
  const tags = new Set(sides.flatMap(({ logged }) => logged.tags ?? []));
  return { date, day: dayNumber(date), sets, tags: [...tags].sort() };
}
