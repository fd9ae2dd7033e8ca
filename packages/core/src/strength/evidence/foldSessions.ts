import { evidenceModel } from '../evidenceModel.ts';
import type { LogDensity } from '../grid/Axis.ts';
import { blur } from '../grid/blur.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { learnSession } from './learnSession.ts';
import { passDays } from './passDays.ts';
import type { Cells } from './planeAround.ts';

/** The belief on a day, with what a later set on the same day needs. */
export interface BeliefState {
  readonly day: number;
  readonly usual: LogDensity;
  readonly today: LogDensity;
  readonly before: LogDensity;
  readonly sets: readonly PerformedSet[];
}

/** How to fold. */
export interface FoldSetting {
  readonly alpha: number;
  readonly trained: boolean;
  readonly cells: Cells;
}

/** The belief on a day, before any set of that day. */
export function openDay(usual: LogDensity, day: number): BeliefState {
  const today = blur(usual, 'columns', evidenceModel.day.value, 'empty');
  return { day, usual, today, before: usual, sets: [] };
}

/** The belief on `today`, after the sets since the state, session by session. */
export function foldSessions(
  start: BeliefState,
  sets: readonly PerformedSet[],
  today: number,
  setting: FoldSetting,
): BeliefState {
  const byDay = new Map<number, PerformedSet[]>();
  for (const set of [...sets].sort((a, b) => a.day - b.day)) {
    const day = Math.floor(set.day);
    byDay.set(day, [...(byDay.get(day) ?? []), set]);
  }
  let state = start;
  for (const [day, fresh] of byDay) {
    const { before, sets: earlier } = moveTo(state, day, setting);
    const session = [...earlier, ...fresh];
    const learned = learnSession(before, session, setting.alpha, setting.cells);
    state = { day, ...learned, before, sets: session };
  }
  return moveTo(state, Math.floor(today), setting);
}

function moveTo(state: BeliefState, day: number, { trained, cells }: FoldSetting): BeliefState {
  if (day === state.day) return state;
  return openDay(passDays(state.usual, { days: day - state.day, trained }, cells), day);
}
