import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { JoinIntent, LiftIntent } from './Intent.ts';
import { minutesOf } from './minutesOf.ts';
import { planSession } from './planSession.ts';
import { printSheet } from './printSheet.ts';
import { roundWait } from './roundWait.ts';
import { sessionSheet } from './sessionSheet.ts';
import { timelineOf } from './timelineOf.ts';

const [known] = pulldownSets as readonly [ClientSet];
const strong: Client = {
  ...client,
  sets: [
    known,
    { ...known, exercise: 'straight-arm-cable-pulldown', load: { value: 25, unit: 'kg' } },
    {
      ...known,
      exercise: 'dumbbell-curl',
      equipment: 'dumbbells',
      load: { value: 10, unit: 'kg' },
    },
    {
      ...known,
      exercise: 'dumbbell-bench-press',
      equipment: 'dumbbells',
      load: { value: 20, unit: 'kg' },
    },
  ],
};
const pair = { kind: 'pair', transitionSeconds: 10 } as const;
const straightArm: LiftIntent = { ...pulldown, exercise: 'straight-arm-cable-pulldown' };
const press: LiftIntent = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };

function plan(who: Client, ...lifts: readonly LiftIntent[]) {
  const session = planSession({ client: who, gym, intent: intentOf(...lifts) });
  if (session.kind !== 'session') throw new Error(session.kind);
  return session;
}

function two(join: JoinIntent, first: LiftIntent = straightArm, second: LiftIntent = pulldown) {
  const session = plan(strong, { ...first, join }, second);
  const [a, b] = session.lifts;
  if (a?.kind !== 'planned' || b?.kind !== 'planned') throw new Error('not planned');
  return { session, a, b };
}

describe('a pair', () => {
  it('is done in rounds, the isolation set straight into the compound one', () => {
    const { session, a, b } = two(pair);
    expect(a.join).toMatchObject({ kind: 'pair', place: 'first', transitionSeconds: 10 });
    expect(b.join).toMatchObject({ kind: 'pair', place: 'second' });
    const work = session.timeline.filter(({ kind }) => kind === 'work');
    expect(work.map(({ lift, step }) => [lift, step])).toEqual([
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ]);
    const [first, second] = work;
    expect((second?.startSeconds ?? 0) - (first?.startSeconds ?? 0) - (first?.seconds ?? 0)).toBe(
      10,
    );
  });

  it('loads the second lift lighter than by itself, inside the band of the pair', () => {
    const { b } = two(pair);
    const effect = b.join?.effect;
    if (!effect) throw new Error('no effect');
    expect(b.work.choice.load).toBeLessThan(effect.usual.choice.load);
    const share = b.work.choice.load / effect.usual.choice.load;
    expect(share).toBeGreaterThan(effect.loadShare.low);
    expect(share).toBeLessThan(effect.loadShare.high);
    expect(effect.cautions.map(({ id }) => id)).toContain('pair-evidence-mixed');
    expect(b.sets[0]?.capacity).toBeLessThan(1);
  });

  it('takes less time than the two lifts apart, though no rest is shorter', () => {
    const { session } = two(pair);
    const apart = plan(strong, straightArm, pulldown);
    expect(session.minutes.total).toBeLessThan(apart.minutes.total);
    const rests = session.timeline.filter(({ kind }) => kind === 'rest');
    expect(rests).toHaveLength(1);
    expect(rests[0]?.seconds).toBeGreaterThanOrEqual(150);
  });

  it('says on the sheet how it is done and that the load is a guess', () => {
    const text = printSheet(sessionSheet(two(pair).session)).replaceAll(/\s+/g, ' ');
    expect(text).toContain('rest 10 s, then a set of 2');
    expect(text).toContain('then the next round with 1');
    expect(text).toMatch(
      /Without the isolation set: .* After it about \d+ % of what is moved there/,
    );
    expect(text).toContain('no proven size or strength');
  });

  it('flags a long way between the two', () => {
    const ids = two({ ...pair, transitionSeconds: 40 }).b.join?.effect?.cautions.map(
      ({ id }) => id,
    );
    expect(ids).toContain('pair-transition-too-long');
  });
});

describe('a pair that is none', () => {
  it('is planned as two lifts with the reason', () => {
    const curl = { ...pulldown, exercise: 'dumbbell-curl', equipment: 'dumbbells', join: pair };
    const [a, b] = plan(strong, curl, pulldown).lifts;
    if (a?.kind !== 'planned' || b?.kind !== 'planned') throw new Error('not planned');
    expect(a.join).toBeUndefined();
    expect(b.join).toBeUndefined();
    expect(a.refused.map(({ code }) => code)).toEqual(['pairing.compound-misses-target']);
  });

  it.each([
    [
      'a first lift without history',
      { ...strong, sets: [known] },
      [{ ...straightArm, join: pair }, pulldown],
      'session.join-loads-unknown',
    ],
    [
      'a second lift without history',
      strong,
      [
        { ...straightArm, join: pair },
        { ...pulldown, exercise: 'cable-row' },
      ],
      'session.join-loads-unknown',
    ],
    ['no second lift', strong, [{ ...straightArm, join: pair }], 'session.join-no-second'],
    [
      'a second lift that is left out',
      strong,
      [
        { ...straightArm, join: pair },
        { ...pulldown, equipment: 'nowhere' },
      ],
      'session.join-no-second',
    ],
  ] as const)('for %s', (_, who, lifts, code) => {
    const [first] = plan(who, ...lifts).lifts;
    if (first === undefined || first.kind === 'left-out') throw new Error(first?.kind);
    expect(first.refused).toMatchObject([{ what: 'join', code }]);
  });
});

describe('two lifts by turns', () => {
  const turns = { kind: 'in-turn', transitionSeconds: 30 } as const;

  it('rest while the other one works, and are no pair', () => {
    const { session, b } = two(turns, pulldown, press);
    expect(b.join?.effect).toBeUndefined();
    const starts = session.timeline.filter(({ kind, lift }) => kind === 'work' && lift === 0);
    const [one, next] = starts;
    const between = (next?.startSeconds ?? 0) - (one?.startSeconds ?? 0) - (one?.seconds ?? 0);
    expect(between).toBeGreaterThanOrEqual(150);
    const apart = plan(strong, pulldown, press);
    expect(session.minutes.total).toBeLessThan(apart.minutes.total);
  });

  it('are refused for the same muscles', () => {
    const [first] = plan(strong, { ...straightArm, join: turns }, pulldown).lifts;
    expect(first?.kind === 'planned' && first.refused).toMatchObject([
      { code: 'session.in-turn-shares-muscles' },
    ]);
  });
});

describe('rounds of two lifts with sets of their own', () => {
  const turns = { kind: 'in-turn', transitionSeconds: 30 } as const;
  const hold = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 } as const] };
  const worked = (first: LiftIntent, second: LiftIntent) => {
    const { session, a, b } = two(turns, first, second);
    const work = session.timeline.filter(({ kind }) => kind === 'work');
    return { a, b, order: work.map(({ lift, step }) => [lift, step]) };
  };

  it('go on with the longer one when the other is done', () => {
    const long = worked({ ...pulldown, sets: 3 }, { ...press, sets: 1 });
    expect(long.order).toEqual([
      [0, 0],
      [1, 0],
      [0, 1],
      [0, 2],
    ]);
    expect([long.a.sets.length, long.b.sets.length]).toEqual([3, 1]);
    // alone again, the lift rests as it wants to
    expect(long.a.join?.waits).toHaveLength(2);
    expect(long.a.join?.waits[1]).toBe(150);
    const short = worked({ ...pulldown, sets: 1 }, { ...press, sets: 3 });
    expect(short.order).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
      [1, 2],
    ]);
    expect(short.b.join?.waits).toEqual(short.a.join?.waits);
    expect([short.a.sets.length, short.b.sets.length]).toEqual([1, 3]);
  });

  it('go past failure in the last set of each', () => {
    const first = worked({ ...pulldown, chain: hold }, press);
    expect(first.a.chain?.stages).toHaveLength(2);
    expect(first.b.chain).toBeUndefined();
    const second = worked(pulldown, { ...press, chain: hold });
    expect(second.a.chain).toBeUndefined();
    expect(second.b.chain?.stages).toHaveLength(2);
    expect(worked(pulldown, press).a.chain).toBeUndefined();
  });

  it('find the second lift of a pair less tired after a longer way', () => {
    const capacity = (transitionSeconds: number) =>
      two({ kind: 'pair', transitionSeconds }).b.sets.map((set) => set.capacity);
    const [near, far] = [capacity(0), capacity(60)];
    expect(near[0]).toBeLessThan(far[0] ?? 0);
    // the rest after a round lets the second one begin fresher than with none
    expect(near[1]).toBeGreaterThan(0.5);
  });

  it('are none where one of them has no load', () => {
    const heavy = { minReps: 100, maxReps: 110 };
    const [first] = plan(strong, { ...pulldown, join: turns }, { ...press, window: heavy }).lifts;
    expect(first?.kind === 'planned' && first.refused).toMatchObject([
      { what: 'join', code: 'session.join-no-load' },
    ]);
    const [gone] = plan(strong, { ...pulldown, window: heavy, join: turns }, press).lifts;
    expect(gone?.kind).toBe('left-out');
  });
});

describe('rests in rounds', () => {
  const set = { seconds: 60, restSeconds: 120, goesOn: true };

  it('are filled by the other lift in turn, and not in a pair', () => {
    // Between two sets of a lift: 30 + 60 + 30 s are 120 s.
    expect(roundWait({ kind: 'in-turn', transitionSeconds: 30 }, set, set)).toBe(30);
    expect(roundWait({ kind: 'pair', transitionSeconds: 30 }, set, set)).toBe(120);
    expect(roundWait({ kind: 'pair', transitionSeconds: 30 }, set, undefined)).toBe(120);
  });

  it('make six exercises of three one-minute sets 26.5 minutes long', () => {
    // A practitioner's sum: 18 minutes of sets and 17 half-minutes between them.
    const minute = { low: 10, likely: 10, high: 10, level: 0.8 };
    const { a } = two(
      pair,
      { ...straightArm, sets: 3, restSeconds: 120 },
      { ...pulldown, sets: 3, restSeconds: 120 },
    );
    const turn = (place: 'first' | 'second') =>
      ({
        ...a,
        sets: a.sets.map((one) => ({ ...one, reps: minute })),
        warmUp: { kind: 'none', reason: 'work-load-not-reachable', message: '' },
        join: { kind: 'in-turn', place, transitionSeconds: 30, waits: [30, 30] },
      }) as const;
    const lifts = [0, 1, 2].flatMap(() => [turn('first'), turn('second')]);
    const timeline = timelineOf(lifts, 0);
    // Setting up and the way back to the first lift come on top in a plan: three half-minutes here,
    // two of which stand for the pauses between the pairs.
    expect(minutesOf(timeline).total - 0.5).toBeCloseTo(26.5, 9);
  });
});
