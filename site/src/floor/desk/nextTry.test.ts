import type { SetEnd } from '@windlass/core/strength';
import { describe, expect, it } from 'vitest';
import { examples } from '../../planner/state/examples.ts';
import type { FloorEvent, FloorHappening } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { nextTry } from './nextTry.ts';

const opened = openPlan(examples['first-day']);
if (opened.kind === 'wrong') throw new Error(opened.message);
const { session, planned } = opened;

/** Does the tries of the leg press, each ending as told, and takes up what follows from each. */
function afterTries(...ends: readonly SetEnd[]) {
  const happened: FloorHappening[] = [];
  const fold = () =>
    foldEvents(
      session,
      happened.map((one, at): FloorEvent => ({ ...one, at: at * 1000 })),
    );
  for (const end of ends) {
    happened.push({ kind: 'begun', leadInSeconds: 0, counted: false });
    for (let rep = 0; rep < 8; rep++) happened.push({ kind: 'rep', by: 'hand' });
    happened.push({ kind: 'stopped' }, { kind: 'told', end });
    const state = fold();
    if (stepLoad(session, state, state.step) === null) {
      happened.push(...nextTry(planned, session, state).what);
    }
  }
  return fold();
}

describe('the search for a first load', () => {
  it('goes up after a try that was far too easy', () => {
    const state = afterTries({ kind: 'more', atLeast: 15 });
    expect(session.steps[state.step]).toMatchObject({ kind: 'try', number: 2 });
    const first = session.steps[0]?.load?.load ?? Number.NaN;
    expect(stepLoad(session, state, state.step)?.load).toBeGreaterThan(first);
  });

  it('goes on to the work set, without the tries that are left, when the load is found', () => {
    const state = afterTries({ kind: 'reserve', repsLeft: 4 });
    expect(session.steps[state.step]).toMatchObject({ kind: 'work', lift: 0 });
    expect([...state.leftOut]).toEqual([1, 2, 3]);
    expect(stepLoad(session, state, state.step)).not.toBeNull();
  });

  it('ends in the work set, with its load, after four tries at most', () => {
    const easy = { kind: 'more', atLeast: 15 } as const;
    const state = afterTries(easy, easy, easy, easy);
    expect(session.steps[state.step]).toMatchObject({ kind: 'work', lift: 0 });
    expect(stepLoad(session, state, state.step)).not.toBeNull();
  });

  it('leaves the lift out where the lightest load is too heavy', () => {
    const failedAtOnce = foldEvents(session, [
      { kind: 'begun', leadInSeconds: 0, counted: false, at: 0 },
      { kind: 'failed', at: 1 },
    ]);
    const answer = nextTry(planned, session, failedAtOnce);
    expect(answer.isTooHeavy).toBe(true);
    expect(answer.what[0]).toMatchObject({ kind: 'left-out', steps: [1, 2, 3, 4] });
  });
});
