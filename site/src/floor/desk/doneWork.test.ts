import { describe, expect, it } from 'vitest';
import gym from '../../../../examples/boathouse/gym.json' with { type: 'json' };
import pastFailureDay from '../../../../examples/boathouse/past-failure-day.json' with {
  type: 'json',
};
import { examples } from '../../planner/state/examples.ts';
import { type Json, setAt } from '../../planner/state/tree.ts';
import type { FloorHappening } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { doneWork } from './doneWork.ts';
import { sessionResult } from './sessionResult.ts';

const date = pastFailureDay.intent.date;
/** Two lifts with a load and a way past failure each; no lift to be found on the way. */
const { muscles: _, ...intent } = pastFailureDay.intent;
const day: Json = { ...pastFailureDay, intent, gym };

function opened(draft: Json) {
  const plan = openPlan(draft);
  if (plan.kind === 'wrong') throw new Error(plan.message);
  return plan;
}

function result(draft: Json, ...what: readonly FloorHappening[]) {
  const { session, planned } = opened(draft);
  const state = foldEvents(
    session,
    what.map((one, at) => ({ ...one, at: at * 1000 })),
  );
  return {
    work: doneWork(planned, session, state).map(({ exercise: _, ...counts }) => counts),
    ...sessionResult(planned, session, state, date),
  };
}

/** A set of eight to failure, and so many stages after it. */
const set = (step: number, stagesDone?: number): readonly FloorHappening[] => [
  { kind: 'gone-to', step },
  { kind: 'begun', leadInSeconds: 0, counted: false },
  ...Array.from({ length: 8 }, () => ({ kind: 'rep', by: 'hand' }) as const),
  { kind: 'failed' },
  ...(stagesDone === undefined
    ? []
    : [
        {
          kind: 'live-over',
          record: { reps: 8, end: { kind: 'failure' }, stagesDone, note: '' },
        } as const,
      ]),
];
const plainAt = (step: number): FloorHappening => ({ kind: 'carried-on', step, plan: null });
/** Each of the two lifts has one warm-up set and one work set. */
const [EXTENSION, CHIN_UP] = [1, 3] as const;

/** The day that the plan itself gives, of a plan that asks for what was done. */
function plannedDay(draft: Json) {
  const { plan } = opened(draft).planned;
  if (plan.kind !== 'session' || !plan.next) throw new Error('the plan has a next session');
  return { likely: plan.next.likely.date, cautious: plan.next.cautious.date };
}
const without = (...lifts: readonly number[]) =>
  lifts.reduce<Json>(
    (draft, lift) => setAt(draft, ['intent', 'lifts', lift, 'chain'], undefined),
    day,
  );

describe('the next day by what was done', () => {
  it('is that of the plan where all was done as planned', () => {
    const { work, nextDay } = result(day, ...set(EXTENSION, 2), ...set(CHIN_UP, 1));
    expect(work).toEqual([
      { sets: 1, repsInReserve: 0, stagesPastFailure: 2 },
      { sets: 1, repsInReserve: 0, stagesPastFailure: 1 },
    ]);
    expect(nextDay).toEqual(plannedDay(day));
  });

  it('is that of a plan without them where no stage past failure was done', () => {
    const plain = [plainAt(EXTENSION), plainAt(CHIN_UP), ...set(EXTENSION), ...set(CHIN_UP)];
    expect(result(day, ...plain).nextDay).toEqual(plannedDay(without(0, 1)));
    const ended = [...set(EXTENSION, 0), ...set(CHIN_UP, 0)];
    expect(result(day, ...ended).nextDay).toEqual(plannedDay(without(0, 1)));
    expect(plannedDay(without(0, 1)).cautious < plannedDay(day).cautious).toBe(true);
  });

  it('is that of a shorter plan where only the first stage was done', () => {
    const held = setAt(
      without(1),
      ['intent', 'lifts', 0, 'chain', 'stages'],
      [pastFailureDay.intent.lifts[0]?.chain.stages[0] ?? null],
    );
    const { nextDay } = result(day, plainAt(CHIN_UP), ...set(EXTENSION, 1), ...set(CHIN_UP));
    expect(nextDay).toEqual(plannedDay(held));
  });

  it('keeps a day that was fixed', () => {
    const fixed = setAt(day, ['intent', 'overrules'], { nextDate: '2027-03-27' });
    expect(result(fixed, plainAt(EXTENSION), ...set(EXTENSION)).nextDay?.likely).toBe('2027-03-27');
  });
});

describe('the work of a session', () => {
  it('has one set for two sides, by the one that went further', () => {
    const work = result(
      examples['pull-day'],
      ...set(7),
      { kind: 'begun', leadInSeconds: 0, counted: false },
      { kind: 'rep', by: 'hand' },
      { kind: 'stopped' },
      { kind: 'told', end: { kind: 'reserve', repsLeft: 3 } },
    ).work;
    expect(work).toEqual([{ sets: 1, repsInReserve: 0, stagesPastFailure: 0 }]);
  });

  it('counts no warm-up set, and none of which no repetition was done', () => {
    const nothing = result(
      day,
      { kind: 'done' },
      { kind: 'begun', leadInSeconds: 0, counted: false },
      { kind: 'stopped' },
      { kind: 'told' },
    );
    expect(nothing.work).toEqual([]);
  });
});
