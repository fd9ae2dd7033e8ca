import type { PerformedSet } from '../PerformedSet.ts';
import type { BeliefState, LearnSetting } from './BeliefState.ts';
import { learnSession } from './learnSession.ts';
import { moveToDay } from './moveToDay.ts';
import { sessionsOf } from './sessionsOf.ts';

/** The belief on `today`, after the sets since the state, session by session. */
export function foldSessions(
  start: BeliefState,
  sets: readonly PerformedSet[],
  today: number,
  setting: LearnSetting,
): BeliefState {
  const learned = sessionsOf(sets).reduce<BeliefState>((state, session) => {
    const { day, before, sets: earlier } = moveToDay(state, session.day, setting);
    const all = [...earlier, ...session.sets];
    return { day, before, sets: all, ...learnSession(before, all, setting.alpha, setting.cells) };
  }, start);
  return moveToDay(learned, Math.floor(today), setting);
}
