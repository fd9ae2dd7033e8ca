import type { LiveSetEvent } from '@windlass/core/extension';
import { describe, expect, it } from 'vitest';
import type { FloorStep } from '../session/FloorSession.ts';
import type { FloorEvent, FloorHappening } from './FloorEvent.ts';
import { foldEvents } from './foldEvents.ts';

type WithoutTime<Event> = Event extends LiveSetEvent ? Omit<Event, 'atSeconds'> : never;
type Said = WithoutTime<LiveSetEvent>;

const step = (change: Partial<FloorStep>): FloorStep => ({
  lift: 0,
  kind: 'work',
  number: 1,
  of: 2,
  load: null,
  reps: 9,
  restSeconds: 150,
  ...change,
});

/** A warm-up set and two work sets of one lift, one set of another. */
const session = {
  steps: [
    step({ kind: 'warm-up', of: 1, reps: 5, restSeconds: 60 }),
    step({}),
    step({ number: 2, restSeconds: 120 }),
    step({ lift: 1, of: 1, restSeconds: 0 }),
  ],
};

/** A way past failure. */
const plan = {
  exerciseId: 'cable-pulldown',
  load: { value: 50, unit: 'kg' },
  stages: [{ kind: 'lift' }, { kind: 'hold', at: 'middle', maxSeconds: 10 }],
  secondsPerRep: 6,
  maxSeconds: 180,
} as const;

/** The state after happenings with the seconds they come at. */
type Timed = readonly [seconds: number, what: FloorHappening];

function afterIn(of: typeof session, log: readonly Timed[]) {
  const events = log.map(([seconds, what]): FloorEvent => ({ ...what, at: seconds * 1000 }));
  return foldEvents(of, events);
}
const after = (...log: readonly Timed[]) => afterIn(session, log);

const warm = [0, { kind: 'done' }] as const;
const begun = [70, { kind: 'begun', leadInSeconds: 5, counted: true }] as const;
const rep = (seconds: number) => [seconds, { kind: 'rep', by: 'count' }] as const;
const undone = (seconds: number) => [seconds, { kind: 'undone' }] as const;

describe('a session', () => {
  it('goes from a warm-up set to its rest and the next set', () => {
    const state = after(warm);
    expect(state).toMatchObject({ phase: 'ready', step: 1, rest: { startedAt: 0, seconds: 60 } });
    expect(state.done.get(0)).toMatchObject({ reps: 5 });
  });

  it('counts a set that fails, and rests', () => {
    const state = after(warm, begun, rep(81), rep(87), rep(93), [97, { kind: 'failed' }]);
    expect(state.done.get(1)).toMatchObject({
      reps: 3,
      end: { kind: 'failure' },
      startedAt: 75_000,
      endedAt: 97_000,
    });
    expect(state).toMatchObject({
      phase: 'ready',
      step: 2,
      rest: { startedAt: 97_000, seconds: 150 },
    });
  });

  it('asks how many were left after a set that was stopped, while the rest runs', () => {
    const stopped = [warm, begun, rep(81), [85, { kind: 'stopped' }]] as const;
    expect(after(...stopped)).toMatchObject({ phase: 'asking', rest: { startedAt: 85_000 } });
    const told = after(...stopped, [90, { kind: 'told', end: { kind: 'reserve', repsLeft: 2 } }]);
    expect(told.done.get(1)).toMatchObject({ reps: 1, end: { kind: 'reserve', repsLeft: 2 } });
    expect(told).toMatchObject({ phase: 'ready', step: 2, rest: { startedAt: 85_000 } });
  });

  it('corrects the count by hand without losing the time', () => {
    const state = after(warm, begun, rep(81), rep(87), [88, { kind: 'rep-less' }], rep(93));
    expect(state.running).toMatchObject({ reps: 2, count: { told: 3 } });
  });

  it('takes an end back with the count standing still, and brings it back', () => {
    const failed = [warm, begun, rep(81), [84, { kind: 'failed' }], undone(90)] as const;
    expect(after(...failed)).toMatchObject({ phase: 'lifting', running: { reps: 1, count: null } });
    expect(after(...failed, [95, { kind: 'redone' }])).toMatchObject({ phase: 'ready', step: 2 });
    const on = after(...failed, [95, { kind: 'counted-on', leadInSeconds: 3 }]);
    expect(on.running?.count).toEqual({ startsAt: 98_000, repsBefore: 1, told: 0 });
  });

  it('takes a beginning back with all that was counted from it', () => {
    expect(after(warm, begun, rep(81), rep(87), undone(88))).toEqual(after(warm));
  });

  it('takes only the correction back, not what was counted since', () => {
    const state = after(warm, begun, rep(81), [82, { kind: 'rep-less' }], rep(87), undone(88));
    expect(state.running?.reps).toBe(2);
  });

  it('ends the set with a sign, and the lift or the session as its rule says', () => {
    const sign = (ends: 'the-set' | 'the-exercise' | 'the-session') =>
      after(warm, begun, rep(81), [83, { kind: 'sign', rule: 'rising-pain', ends }]);
    expect(sign('the-set')).toMatchObject({ phase: 'ready', step: 2 });
    expect(sign('the-exercise')).toMatchObject({ phase: 'ready', step: 3 });
    expect(sign('the-session')).toMatchObject({ phase: 'over', endedBySign: true, rest: null });
    expect(sign('the-set').done.get(1)).toMatchObject({ reps: 1, sign: 'rising-pain' });
  });

  it('counts a sign told in a rest to the set before it', () => {
    const told = [90, { kind: 'sign', rule: 'rising-pain', ends: 'the-exercise' }] as const;
    const state = after(warm, begun, [84, { kind: 'failed' }], told);
    expect(state).toMatchObject({ step: 3, signs: [{ step: 1, rule: 'rising-pain' }] });
  });

  it('goes on past failure where that was chosen, to what it gave', () => {
    const chosen = [60, { kind: 'carried-on', step: 1, plan }] as const;
    const held = [88, { kind: 'live', event: { kind: 'hold-begun', atSeconds: 13 } }] as const;
    const failed = [warm, chosen, begun, rep(81), [86, { kind: 'failed' }]] as const;
    expect(after(...failed, held)).toMatchObject({
      phase: 'past-failure',
      live: [{ kind: 'started' }, { atSeconds: 6 }, { atSeconds: 11 }, { atSeconds: 13 }],
    });
    expect(after(...failed, held, undone(90)).live).toEqual(after(...failed).live);
    const record = { reps: 1, end: { kind: 'failure' }, note: 'hold half way' } as const;
    const over = after(...failed, held, [96, { kind: 'live-over', record }]);
    expect(over.done.get(1)).toMatchObject({ reps: 1, endedAt: 96_000, pastFailure: record });
  });

  describe('with a set that is planned to go on past failure', () => {
    const chain = { plan, needs: [] };
    const chained = {
      steps: session.steps.map((one, place) => (place === 2 ? { ...one, chain } : one)),
    };
    const toIt = [0, { kind: 'gone-to', step: 2 }] as const;
    const failed = [toIt, begun, rep(81), [86, { kind: 'failed' }]] as const;
    const live = (seconds: number, event: Said) =>
      [75 + seconds, { kind: 'live', event: { ...event, atSeconds: seconds } }] as const;
    const record = { reps: 1, end: { kind: 'failure' }, note: 'Hold 8 s' } as const;
    const over = [96, { kind: 'live-over', record }] as const;
    const held = [
      live(13, { kind: 'hold-begun' }),
      live(21, { kind: 'hold-ended' }),
      over,
    ] as const;
    const inChained = (...log: readonly Timed[]) => afterIn(chained, log);

    it('goes on with it when that set fails, and with no other', () => {
      expect(inChained(...failed)).toMatchObject({ phase: 'past-failure', step: 2 });
      expect(inChained(warm, begun, rep(81), [86, { kind: 'failed' }]).phase).toBe('ready');
      expect(inChained(...failed, ...held)).toMatchObject({ phase: 'ready', step: 3 });
    });

    it('does not where that was taken out of it, and does it otherwise where that was chosen', () => {
      const none = [1, { kind: 'carried-on', step: 2, plan: null }] as const;
      expect(inChained(none, ...failed).done.get(2)).toMatchObject({ end: { kind: 'failure' } });
      const other = {
        ...plan,
        stages: [{ kind: 'lift' }, { kind: 'pause', seconds: 15 }],
      } as const;
      const chosen = [1, { kind: 'carried-on', step: 2, plan: other }] as const;
      expect(inChained(chosen).chains.get(2)).toEqual(other);
    });

    it('takes back with one press what ended it, and brings it back with one', () => {
      const before = inChained(...failed, ...held.slice(0, 1));
      const whole = [...failed, ...held, undone(100)] as const;
      expect(inChained(...whole)).toEqual(before);
      expect(inChained(...whole, [101, { kind: 'redone' }])).toEqual(inChained(...failed, ...held));
      const rule = 'breath-held';
      const signed = [
        live(15, { kind: 'sign', rule }),
        [90, { kind: 'live-over', record: { ...record, sign: rule } }],
        [90, { kind: 'sign', rule, ends: 'the-set', step: 2 }],
      ] as const;
      expect(inChained(...failed, ...held.slice(0, 1), ...signed).done.get(2)?.sign).toBe(rule);
      expect(inChained(...failed, ...held.slice(0, 1), ...signed, undone(100))).toEqual(before);
    });

    it('ends its own lift with a sign, also where the next set follows without a rest', () => {
      const noRest = {
        steps: chained.steps.map((one, place) => (place === 2 ? { ...one, restSeconds: 0 } : one)),
      };
      const sign = [
        96,
        { kind: 'sign', rule: 'rising-pain', ends: 'the-exercise', step: 2 },
      ] as const;
      const state = afterIn(noRest, [...failed, ...held, sign]);
      expect(state.signs).toEqual([{ step: 2, rule: 'rising-pain' }]);
      expect([...state.leftOut]).toEqual([0, 1]);
      expect(state).toMatchObject({ phase: 'ready', step: 3 });
    });

    it('takes back only a sign that was told in the rest after it', () => {
      const sign = [110, { kind: 'sign', rule: 'rising-pain', ends: 'the-exercise' }] as const;
      expect(inChained(...failed, ...held, sign, undone(111))).toEqual(
        inChained(...failed, ...held),
      );
    });
  });

  it('lengthens, shortens and ends a rest', () => {
    expect(after(warm, [10, { kind: 'rest-changed', seconds: 30 }]).rest?.seconds).toBe(90);
    expect(after(warm, [10, { kind: 'rest-changed', seconds: -90 }]).rest?.seconds).toBe(0);
    expect(after(warm, [10, { kind: 'rest-over' }]).rest).toBeNull();
  });

  it('is over when every set is done or left out', () => {
    const state = after(warm, [1, { kind: 'left-out', steps: [1, 2, 3] }]);
    expect(state.phase).toBe('over');
    expect(
      after(warm, [1, { kind: 'left-out', steps: [1, 2, 3] }], [5, { kind: 'gone-to', step: 2 }]),
    ).toMatchObject({
      phase: 'ready',
      step: 2,
    });
  });

  it('without a set is over at once', () => {
    expect(foldEvents({ steps: [] }, []).phase).toBe('over');
  });
});
