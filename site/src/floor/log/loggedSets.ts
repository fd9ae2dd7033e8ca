import { loadValue } from '@windlass/core/load';
import type { LoggedSet } from '@windlass/core/progress';
import { formatTempo } from '@windlass/core/tempo';
import type { DoneSet, FloorState } from '../run/FloorState.ts';
import type { FloorLift, FloorSession, FloorStep } from '../session/FloorSession.ts';

/**
 * What was done in a session as rows for a log, in the order of its steps. Warm-up sets are not in
 * a log; tries are, because they tell of strength. A rest is the one that was taken, from the end
 * of the set before on the same side.
 *
 * @param date the day it was done, `YYYY-MM-DD`.
 */
export function loggedSets(
  session: FloorSession,
  { done, signs }: Pick<FloorState, 'done' | 'signs'>,
  date: string,
): readonly LoggedSet[] {
  const rows: LoggedSet[] = [];
  const before = new Map<string, DoneSet>();
  const numbers = new Map<string, number>();
  for (const [place, step] of session.steps.entries()) {
    const set = done.get(place);
    const lift = session.lifts[step.lift];
    if (!set?.load || !lift || step.kind === 'warm-up') continue;
    const side = `${lift.exercise}|${step.side ?? ''}`;
    const number = (numbers.get(side) ?? 0) + 1;
    numbers.set(side, number);
    const sign = signs.find((one) => one.step === place)?.rule;
    const rule = session.stopRules.find(({ id }) => id === (set.sign ?? sign));
    const notes = [set.pastFailure?.note ?? '', rule?.sign ?? ''].filter((note) => note !== '');
    rows.push({
      ...rowOf(session, step, lift, set),
      date,
      set: number,
      ...restOf(before.get(side), set),
      ...(notes.length > 0 && { note: notes.join('. ') }),
    });
    before.set(side, set);
  }
  return rows;
}

function rowOf(
  { unit, bodyWeight }: FloorSession,
  { side }: FloorStep,
  lift: FloorLift,
  { load, reps, end }: DoneSet,
): Omit<LoggedSet, 'date' | 'set'> {
  if (!load) throw new RangeError('rowOf: a set for a log has a load');
  const isOneHand = load.loading.kind === 'fixed' && load.loading.hands === 1;
  return {
    exercise: lift.exercise,
    ...(side && { side }),
    load: loadValue(load.shown, unit),
    counts: lift.counts,
    ...(lift.counts === 'each-hand' && isOneHand && { hands: 1 }),
    ...(bodyWeight && { bodyWeight }),
    reps,
    ...(end && { end }),
    tempo: formatTempo(lift.tempo),
    equipment: lift.equipment,
  };
}

function restOf(before: DoneSet | undefined, { startedAt }: DoneSet) {
  if (!before || startedAt < before.endedAt) return {};
  return { restSeconds: Math.round((startedAt - before.endedAt) / 1000) };
}
