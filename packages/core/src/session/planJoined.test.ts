import { describe, expect, it } from 'vitest';
import { pulldown } from './boathouse.testing.ts';
import type { ChainIntent, JoinIntent, LiftIntent } from './Intent.ts';
import type { PlanGym } from './PlanGym.ts';
import {
  curl,
  joined,
  kilos,
  pair,
  place,
  plan,
  planned,
  press,
  setOf,
  straightArm,
  strong,
  turns,
} from './rounds.testing.ts';

describe('the second lift of rounds', () => {
  const hold: ChainIntent = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 }] };

  it.each([
    ['a pair', pair, straightArm, pulldown],
    [
      'a pair with one set that goes past failure',
      pair,
      { ...straightArm, sets: 1, chain: hold },
      pulldown,
    ],
    ['turns', turns, pulldown, press],
  ] as const)('has the load that is best for its first set: %s', (_, join, first, second) => {
    const { b } = joined(join, first, second);
    // the chance for which the load was chosen is the chance of the set that is planned with it
    expect(b.sets[0]?.chance).toBeCloseTo(b.work.inside, 9);
  });

  it('has the load that is best for its first set after other lifts as well', () => {
    const row = { ...pulldown, exercise: 'barbell-bent-over-row', equipment: 'short-bar' };
    const who = { ...strong, sets: [...strong.sets, setOf(row.exercise, row.equipment, 55)] };
    for (const [join, first, second] of [
      [turns, press, pulldown],
      [pair, straightArm, pulldown],
    ] as const) {
      const [, , b] = planned([row, { ...first, join }, second], who);
      expect(b?.join).toBeDefined();
      expect(b?.sets[0]?.chance).toBeCloseTo(b?.work.inside ?? 0, 9);
    }
  });

  it('is too tired where everything on the stack is too heavy after the first', () => {
    // 52.5 kg went for ten; the stack begins at 50 kg, which is too heavy right after the other lift
    const lifts = [{ ...straightArm, join: { ...pair, transitionSeconds: 0 } }, pulldown];
    const [first] = planned(lifts, strong, place(50));
    expect(first?.join).toBeUndefined();
    expect(first?.refused).toMatchObject([{ what: 'join', code: 'session.join-too-tired' }]);
    expect(first?.refused[0]?.message).toMatch(/^After the first lift: Everything .* too heavy/);
  });
});

describe('two lifts that were done before in the session', () => {
  // a curl works muscles that help with a pulldown
  // two minutes from one lift to the next, joined or not, and no warm-up sets between
  const way = 120;
  const bare = (lift: LiftIntent): LiftIntent => ({ ...lift, sets: 1, overrules: { warmUp: [] } });
  const capacities = (...lifts: readonly LiftIntent[]) =>
    planned(lifts).map(({ sets }) => sets[0]?.capacity.toFixed(9));

  it.each([
    ['a pair after its first lift', 'pair', [straightArm], straightArm, pulldown],
    ['turns after the second one', 'in-turn', [pulldown], curl, pulldown],
  ] as const)('begin as tired as one after the other: %s', (_, kind, before, first, second) => {
    const lifts = [...before, first, second].map(bare);
    const join = { kind, transitionSeconds: way } as const;
    const inRounds = lifts.map((lift, at) => (at === before.length ? { ...lift, join } : lift));
    expect(capacities(...inRounds)).toEqual(capacities(...lifts));
    expect(planned(inRounds)[before.length]?.join).toBeDefined();
  });
});

describe('rounds by turns', () => {
  const legs: LiftIntent = { ...pulldown, exercise: 'leg-extension', equipment: 'legs' };
  const where: PlanGym = {
    ...place(),
    equipment: [
      ...place().equipment,
      {
        kind: 'stack',
        id: 'legs',
        name: 'Leg extension',
        first: kilos(5),
        rest: [{ weight: kilos(2.5), pieces: 24 }],
        pulleyRatio: 1,
      },
    ],
  };
  const who = { ...strong, sets: [...strong.sets, setOf('leg-extension', 'legs', 40)] };

  const capacities = (lifts: readonly LiftIntent[], at: number) =>
    planned(lifts, who, where)[at]?.sets.map(({ capacity }) => capacity.toFixed(9));

  it.each([
    [2, 2],
    [3, 1],
    [1, 3],
  ])('leave a lift its rests, %i sets and %i, where no muscle is common', (first, second) => {
    const [one, other] = [
      { ...pulldown, sets: first },
      { ...legs, sets: second },
    ];
    // only one of the two asks for a rest, so that it gets exactly what it asks for
    expect(
      capacities(
        [
          { ...one, join: turns },
          { ...other, restSeconds: 0 },
        ],
        0,
      ),
    ).toEqual(capacities([one], 0));
    if (first > 1) return;
    expect(capacities([{ ...one, restSeconds: 0, join: turns }, other], 1)).toEqual(
      capacities([other], 0),
    );
  });

  it.each([
    [0, 150],
    [150, 150],
    [200, 60],
    [30, 300],
  ])('shorten no rest: %i s of the first lift and %i s of the second', (one, other) => {
    const lifts = [
      { ...pulldown, restSeconds: one, sets: 3, join: turns },
      { ...legs, restSeconds: other, sets: 3 },
    ];
    const { timeline } = plan(lifts, who, where);
    for (const [at, wanted] of [one, other].entries()) {
      const work = timeline.filter(({ kind, lift }) => kind === 'work' && lift === at);
      const rests = work.slice(1).map(({ startSeconds }, after) => {
        const { startSeconds: start = 0, seconds = 0 } = work[after] ?? {};
        return startSeconds - start - seconds;
      });
      expect(rests).toHaveLength(2);
      for (const rest of rests) expect(rest).toBeGreaterThan(wanted - 1e-6);
    }
    // no wait is longer than a lift asks for, but for what the other one's repetitions make uncertain
    const [a] = planned(lifts, who, where);
    for (const wait of a?.join?.waits ?? []) expect(wait).toBeLessThanOrEqual(Math.max(one, other));
  });
});

describe('sets of rounds that go past failure', () => {
  const hold: ChainIntent = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 }] };
  const capacities = (first: LiftIntent, second: LiftIntent) => {
    const { a, b } = joined(pair, first, second);
    return [a, b].map(({ sets }) => sets.map(({ capacity }) => capacity));
  };

  it('tire only what comes after them', () => {
    const three = { ...straightArm, sets: 3 };
    const [plainA = [], plainB = []] = capacities(three, { ...pulldown, sets: 3 });
    const [a = [], b = []] = capacities({ ...three, chain: hold }, { ...pulldown, sets: 3 });
    expect(a).toEqual(plainA);
    expect(b.slice(0, 2)).toEqual(plainB.slice(0, 2));
    expect(b[2]).toBeLessThan(plainB[2] ?? 0);
    expect(capacities(three, { ...pulldown, sets: 3, chain: hold })).toEqual([plainA, plainB]);
  });

  it('take their time from the wait for the other one', () => {
    const { a } = joined(
      turns,
      { ...pulldown, chain: hold, sets: 2 },
      { ...press, sets: 3, restSeconds: 900 },
    );
    const first = (a.sets[0]?.reps.likely ?? 0) * 6;
    // 900 s between two sets of the press, with the pulldown and the way to the press in them; after
    // its last set nothing comes between
    expect(a.join?.waits).toEqual([900 - first - 30, 900]);
    const { a: single } = joined(
      turns,
      { ...pulldown, sets: 2, restSeconds: 900 },
      { ...press, sets: 1, chain: hold },
    );
    const [one] = single.join?.waits ?? [];
    const { b } = joined(
      turns,
      { ...pulldown, sets: 2, restSeconds: 900 },
      { ...press, sets: 1, chain: hold },
    );
    // the press goes past failure in its only set: that time is rest for the pulldown
    const second = (b.sets[0]?.reps.likely ?? 0) * 6 + (b.chain?.addedSeconds ?? 0);
    expect(one).toBeCloseTo(900 - 30 - second, 9);
  });
});

describe('lowerings that a person may do', () => {
  const four: ChainIntent = {
    stages: [{ kind: 'lower', secondsEach: 6, maxLowerings: 4 }],
  };
  const helped = { ...strong, alone: false };

  it('are counted over both lifts of a pair', () => {
    // Six are the most for a muscle in a first session: four, and no four more.
    const { a, b } = joined(
      pair,
      { ...straightArm, chain: four },
      { ...pulldown, chain: four },
      helped,
    );
    expect(a.chain?.stages).toHaveLength(2);
    expect(b.chain).toBeUndefined();
    expect(b.refused).toMatchObject([{ code: 'extension.too-many-lowerings' }]);
    const { b: only } = joined(pair, straightArm, { ...pulldown, chain: four }, helped);
    expect(only.chain?.stages).toHaveLength(2);
    expect(only.refused).toEqual([]);
  });
});

describe('a join that is refused', () => {
  const four: ChainIntent = { stages: [{ kind: 'lower', secondsEach: 6, maxLowerings: 4 }] };
  const who = { ...strong, alone: false };

  it.each([
    ['turns for one muscle', turns, straightArm, pulldown],
    ['a pair that misses its muscle', pair, curl, pulldown],
    ['a lift without history', turns, pulldown, { ...pulldown, exercise: 'cable-row' }],
    ['too far apart', { ...turns, transitionSeconds: 601 }, pulldown, press],
    ['no time at all', { ...pair, transitionSeconds: -1 }, straightArm, pulldown],
    ['what is no number', { ...pair, transitionSeconds: Number.NaN }, straightArm, pulldown],
    ['lowerings in both', turns, { ...straightArm, chain: four }, { ...pulldown, chain: four }],
  ] as const)('leaves the plan as if it had not been wished: %s', (_, join, first, second) => {
    const refused = plan([{ ...first, join }, second], who);
    const free = plan([first, second], who);
    const [a, ...rest] = refused.lifts;
    if (a?.kind !== 'planned') throw new Error(a?.kind);
    expect(a.refused).toMatchObject([{ what: 'join' }]);
    const [same, ...others] = free.lifts;
    const { join: __, ...intent } = a.lift.intent;
    expect({ ...a, lift: { ...a.lift, intent }, refused: [] }).toEqual(same);
    expect(rest).toEqual(others);
    expect(refused.timeline).toEqual(free.timeline);
    expect(refused.next).toEqual(free.next);
  });

  it('takes a way of up to ten minutes', () => {
    const codes = (join: JoinIntent, first: LiftIntent, second: LiftIntent) =>
      planned([{ ...first, join }, second])[0]?.refused.map(({ code }) => code);
    for (const transitionSeconds of [0, 600])
      expect(codes({ ...turns, transitionSeconds }, pulldown, press)).toEqual([]);
    expect(codes({ ...pair, transitionSeconds: 601 }, straightArm, pulldown)).toEqual([
      'session.join-transition',
    ]);
  });
});
