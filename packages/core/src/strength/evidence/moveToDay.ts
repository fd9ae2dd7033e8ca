import type { BeliefState, LearnSetting } from './BeliefState.ts';
import { openDay } from './openDay.ts';
import { passDays } from './passDays.ts';

/** The belief on a later day, or the same state when it is that day already. */
export function moveToDay(
  state: BeliefState,
  day: number,
  { trained, cells }: Omit<LearnSetting, 'alpha'>,
): BeliefState {
  if (day === state.day) return state;
  return openDay(passDays(state.usual, { days: day - state.day, trained }, cells), day);
}
