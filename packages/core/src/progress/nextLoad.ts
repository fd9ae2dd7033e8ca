import { requireNumber } from '../basis/index.ts';
import { type LoadChoice, type LoadList, nearestAtMost } from '../equipment/index.ts';
import { dayNumber } from '../recovery/index.ts';
import { stopRules } from '../safety/index.ts';
import { comeback } from './comeback.ts';
import { type LiftSession, setAsideTags } from './LiftSession.ts';
import type { LoadAdvice } from './LoadAdvice.ts';
import type { NextLoadQuestion } from './NextLoadQuestion.ts';
import { progressRules } from './ProgressRules.ts';
import type { AdviceContext } from './review/AdviceContext.ts';
import { afterMiss } from './review/afterMiss.ts';
import { raiseLoad } from './review/raiseLoad.ts';
import { sameLoad } from './review/sameLoad.ts';
import { haveSameLoad, type TopSets, topSets } from './topSets.ts';

/**
 * What to load next time on one exercise, among the loads that the gym has.
 *
 * Repetitions rise through the window first; then the load, by a step of 2 to 10 % and, with a
 * posterior, to the load most likely to end inside the window; then repetitions again. A step that
 * is larger than the rules allow is bridged. A missed session is repeated; three that stand still
 * are taken back by a tenth; a break longer than two weeks begins again below. Sessions tagged
 * `travel`, `light` or `test` neither raise nor lower anything. With pain nothing is advised but
 * whom to ask.
 *
 * @throws RangeError for a window outside 1 to 200, a reserve outside 0 to 20, or a date before the
 * last session.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { toKg } from '@windlass/core/load';
 * import { liftSessions, nextLoad } from '@windlass/core/progress';
 * const press = {
 *   kind: 'stack' as const, id: 'press', name: 'Leg press', pulleyRatio: 1,
 *   first: { value: 5, unit: 'kg' as const }, rest: [{ weight: { value: 5, unit: 'kg' as const }, pieces: 19 }],
 * };
 * const sets = ([['2026-03-02', 8], ['2026-03-05', 9], ['2026-03-09', 10]] as const).map(([date, reps]) => ({
 *   date, exercise: 'leg-press', set: 1, load: { value: 60, unit: 'kg' as const }, counts: 'stack' as const, reps,
 * }));
 * const advice = nextLoad({
 *   sessions: liftSessions(sets, 'leg-press').sessions,
 *   window: { minReps: 8, maxReps: 12 },
 *   equipment: press,
 *   loads: reachableLoads(press),
 *   on: '2026-03-12',
 * });
 * advice.kind === 'repeat' && [toKg(advice.load.load), advice.aim]; // [60, 11]
 * ```
 */
export function nextLoad(question: NextLoadQuestion): LoadAdvice {
  const { window, repsInReserve = 0, loads, on } = question;
  requireNumber('nextLoad', 'minReps', window.minReps, 1, 200);
  requireNumber('nextLoad', 'maxReps', window.maxReps, window.minReps, 200);
  requireNumber('nextLoad', 'repsInReserve', repsInReserve, 0, 20);
  const rules = { ...progressRules, ...question.rules };
  if (question.pain) return painAdvice();
  const sessions = question.sessions.filter(
    ({ tags }) => !tags.some((tag) => setAsideTags.includes(tag)),
  );
  const last = sessions.at(-1);
  if (last === undefined) return { kind: 'no-history' };
  const layoffDays = dayNumber(on) - last.day;
  requireNumber('nextLoad', 'days since the last session', layoffDays, 0);
  const top = topSets(last);
  if (layoffDays > rules.layoffDays) {
    const { curve } = question;
    const old = { load: top.load, reps: Math.max(1, top.fewest) };
    return {
      kind: 'come-back',
      comeback: comeback({ old, layoffDays, loads, ...(curve ? { curve } : {}) }),
    };
  }
  if (loads.kind === 'none') return { kind: 'no-loads', why: loads };
  const choice = asLastTime(loads, top);
  if (choice.kind === 'none') return { kind: 'no-loads', why: choice };
  const here = choice.chosen;
  const context: AdviceContext = { question, rules, sessions, last, list: loads, here };
  const atTop = sessionsAtTop(sessions, top, window.maxReps);
  if (atTop >= rules.sessionsAtTop || top.fewest >= window.maxReps + rules.repsOverTop) {
    return raiseLoad(context);
  }
  if (top.fewest < window.minReps) return afterMiss(context);
  const isTop = top.fewest >= window.maxReps;
  return {
    ...sameLoad(context, Math.min(window.maxReps, top.fewest + 1)),
    kind: 'repeat',
    because: isTop ? 'top-reached-once' : 'inside-the-window',
    says: isTop
      ? `The top of the window was reached once; reach ${window.maxReps} again in every set, then the load rises.`
      : `Keep the load and add a repetition, up to ${window.maxReps}.`,
  };
}

/** The load of last time: the same number where it can be made, otherwise what is just below it. */
function asLastTime(list: LoadList, { load, shown }: TopSets): LoadChoice {
  const same = list.loads.find((one) => one.shown === shown);
  return nearestAtMost(list, same?.load ?? load);
}

function sessionsAtTop(sessions: readonly LiftSession[], last: TopSets, maxReps: number): number {
  const short = sessions.findLastIndex((session) => {
    const top = topSets(session);
    return !haveSameLoad(top, last) || top.fewest < maxReps;
  });
  return sessions.length - 1 - short;
}

function painAdvice(): LoadAdvice {
  const ids = [
    'rising-pain',
    'sharp-or-radiating-pain',
    'numbness-or-weakness',
    'pop-or-sudden-loss',
  ];
  return {
    kind: 'stop',
    signs: stopRules.filter(({ id }) => ids.includes(id)),
    says: 'Pain stops progression: soreness for a day or two is ordinary; sharp, growing or one-sided joint pain, swelling or nerve pain is for a clinician.',
  };
}
