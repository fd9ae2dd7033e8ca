import { describe, expect, it } from 'vitest';
import { kg, loadFromValue } from '../load/index.ts';
import { planPair } from '../pairing/index.ts';
import { enduranceCurves, kappaBand, priorFor, strengthFrom } from '../strength/index.ts';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { ChainIntent, JoinIntent, LiftIntent } from './Intent.ts';
import type { PlanGym } from './PlanGym.ts';
import { planSession } from './planSession.ts';

const [known] = pulldownSets as readonly [ClientSet];
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const setOf = (exercise: string, equipment: string, value: number): ClientSet => ({
  ...known,
  exercise,
  equipment,
  load: kilos(value),
});
const strong: Client = {
  ...client,
  sets: [
    known,
    setOf('straight-arm-cable-pulldown', 'light', 25),
    setOf('dumbbell-bench-press', 'dumbbells', 20),
  ],
};
/** The boathouse with a light pulley, and a pulldown that begins as heavy as asked. */
const place = (first = 7.5): PlanGym => ({
  ...gym,
  equipment: [
    ...gym.equipment.filter(({ id }) => id !== 'pulldown'),
    {
      kind: 'stack',
      id: 'pulldown',
      name: 'Pulldown',
      first: kilos(first),
      rest: [{ weight: kilos(2.5), pieces: 24 }],
      pulleyRatio: 1,
    },
    {
      kind: 'stack',
      id: 'light',
      name: 'Light pulley',
      first: kilos(2.5),
      rest: [{ weight: kilos(2.5), pieces: 20 }],
      pulleyRatio: 1,
    },
  ],
});
const straightArm: LiftIntent = {
  ...pulldown,
  exercise: 'straight-arm-cable-pulldown',
  equipment: 'light',
};
const press: LiftIntent = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };
const pair = { kind: 'pair', transitionSeconds: 10 } as const;
const turns = { kind: 'in-turn', transitionSeconds: 30 } as const;

function plan(lifts: readonly LiftIntent[], who: Client = strong, where: PlanGym = place()) {
  const session = planSession({ client: who, gym: where, intent: intentOf(...lifts) });
  if (session.kind !== 'session') throw new Error(session.kind);
  return session;
}

function planned(lifts: readonly LiftIntent[], who?: Client, where?: PlanGym) {
  return plan(lifts, who, where).lifts.map((lift) => {
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    return lift;
  });
}

const joined = (join: JoinIntent, first: LiftIntent, second: LiftIntent, who?: Client) => {
  const [a, b] = planned([{ ...first, join }, second], who);
  if (!a?.join || !b?.join) throw new Error('not joined');
  return { a, b };
};

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
  const curl: LiftIntent = { ...pulldown, exercise: 'dumbbell-curl', equipment: 'dumbbells' };
  const who = {
    ...strong,
    alone: false,
    sets: [...strong.sets, setOf('dumbbell-curl', 'dumbbells', 10)],
  };

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

describe('a pair', () => {
  it('does to its second lift what the pairing of the two says', () => {
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...strong, health: { ...strong.health, bloodPressure } };
    for (const [who, repsLeft] of [
      [strong, 0],
      [treated, 2],
    ] as const) {
      const { a, b } = joined(pair, straightArm, pulldown, who);
      const [alone] = planned([pulldown], who);
      const pace = (exercise: string) => {
        const sets = who.sets.filter((set) => set.exercise === exercise);
        const belief = strengthFrom({
          sets: sets.map(({ load, reps, end }) => ({
            load: loadFromValue(load),
            reps,
            end,
            day: 0,
            secondsPerRep: 6,
          })),
          prior: priorFor(
            enduranceCurves[
              a.lift.exercise.id === exercise
                ? a.lift.exercise.endurance
                : b.lift.exercise.endurance
            ],
          ),
          today: 7,
        });
        if (belief.kind !== 'posterior') throw new Error(belief.kind);
        return { kappa: kappaBand(belief).likely, alpha: belief.alpha };
      };
      const told = planPair({
        target: ['lats', 'teres-major'],
        isolation: {
          exercise: a.lift.exercise,
          reps: a.sets[0]?.reps.likely ?? 0,
          repsLeft,
          secondsPerRep: 6,
          curve: pace('straight-arm-cable-pulldown'),
        },
        compound: {
          exercise: b.lift.exercise,
          usual: {
            load: alone?.work.choice.load ?? kg(0),
            reps: alone?.work.reps.likely ?? 0,
          },
          secondsPerRep: 6,
          curve: pace('cable-pulldown'),
        },
        transitionSeconds: 10,
      });
      if (told.kind !== 'allowed') throw new Error(told.kind);
      const { usual, ...effect } = b.join?.effect ?? {};
      expect(usual?.choice.load).toBe(alone?.work.choice.load);
      const { loadShare, recovered, sharePerRep, cautions } = told;
      expect(effect).toEqual({ loadShare, recovered, sharePerRep, cautions });
    }
  });

  it('lets neither lift rest while the other works', () => {
    // nobody waits, so the isolation lift is at least as tired as straight after its first set
    const lift = { ...straightArm, restSeconds: 0 };
    const { a } = joined({ ...pair, transitionSeconds: 0 }, lift, {
      ...pulldown,
      sets: 1,
      restSeconds: 0,
    });
    const [alone] = planned([lift]);
    expect(a.sets[1]?.capacity).toBeLessThan(alone?.sets[1]?.capacity ?? 0);
  });
});

describe('a pair at the ends of what there is', () => {
  const crawl = { ...pulldown.tempo, lowerSeconds: 50, liftSeconds: 50 };
  const dash = { ...pulldown.tempo, lowerSeconds: 0, liftSeconds: 0.2 };

  it.each([
    [
      'a hundred repetitions and more before',
      { ...straightArm, overrules: { load: kilos(2.5) } },
      pulldown,
    ],
    [
      'a hundred repetitions and more after',
      straightArm,
      { ...pulldown, overrules: { load: kilos(7.5) } },
    ],
    [
      'minutes a repetition',
      { ...straightArm, tempo: crawl, window: { minReps: 1, maxReps: 4 } },
      pulldown,
    ],
    [
      'a blink a repetition',
      { ...straightArm, tempo: dash, window: { minReps: 20, maxReps: 60 } },
      pulldown,
    ],
  ])('has its effect: %s', (_, first, second) => {
    const { b } = joined(pair, first, second);
    const { low, likely, high } = b.join?.effect?.loadShare ?? { low: 0, likely: 0, high: 0 };
    expect(low).toBeGreaterThan(0);
    expect(likely).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(likely);
    expect(high).toBeLessThanOrEqual(1);
  });
});
