import { describe, expect, it } from 'vitest';
import type { ReachableLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { limitsFor } from '../safety/index.ts';
import {
  enduranceCurves,
  loadForWindow,
  oneRepMaxKg,
  priorFor,
  strengthFrom,
} from '../strength/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { chosenLoad } from './chosenLoad.ts';
import { fixedLoad } from './fixedLoad.ts';
import { type Lift, liftOf } from './liftOf.ts';
import { type WorkLoadQuestion, windowQuestion } from './windowQuestion.ts';
import { workLoad } from './workLoad.ts';

const found = liftOf(pulldown, gym, client.bodyWeight);
if (found.kind !== 'lift') throw new Error(found.message);
const lift: Lift = found;
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const believe = (load: number, reps: number) => {
  const belief = strengthFrom({
    sets: [{ load: kg(load), reps, end: { kind: 'failure' }, day: 0, secondsPerRep: 6 }],
    prior: priorFor(enduranceCurves.pull),
    today: 7,
  });
  if (belief.kind !== 'posterior') throw new Error('nothing known');
  return belief;
};
const posterior = believe(52.5, 10);
const max = oneRepMaxKg(posterior, 0.8, 'today').likely;
const question: WorkLoadQuestion = {
  lift,
  posterior,
  secondsPerRep: 6,
  capacity: 1,
  repsInReserve: 0,
  intensityCap: 1,
};
const inWindow = (minReps: number, maxReps: number, change: Partial<WorkLoadQuestion> = {}) => ({
  ...question,
  lift: { ...lift, intent: { ...lift.intent, window: { minReps, maxReps } } },
  ...change,
});
const answer = (asked: WorkLoadQuestion) => {
  const load = workLoad(asked);
  if (load.kind !== 'found') throw new Error(load.message);
  return load;
};
const shown = (load: { readonly choice: ReachableLoad } | undefined) =>
  load && toKg(load.choice.shown);

/** The lift with loads that are made of so many pieces each. */
const made = (...loads: readonly (readonly [number, number])[]): Lift => {
  const [first] = lift.loads.loads;
  const list = loads.map(([value, pieces]) => ({
    ...first,
    load: kg(value),
    shown: kg(value),
    loading: { ...first.loading, pieces } as ReachableLoad['loading'],
  }));
  return { ...lift, loads: { ...lift.loads, loads: list as [ReachableLoad, ...ReachableLoad[]] } };
};

describe('workLoad', () => {
  it('is the load with the best chance, with its neighbours in the list', () => {
    const { work, lighter, heavier, reason } = answer(question);
    const { loads } = lift.loads;
    const best = loadForWindow(windowQuestion(question, loads));
    if (best.kind !== 'found') throw new Error(best.kind);
    expect(reason).toBe('best-chance');
    expect(work.inside).toBeGreaterThan(best.best.inside - 0.012);
    const at = loads.indexOf(work.choice);
    expect(lighter?.choice).toBe(loads[at - 1]);
    expect(heavier?.choice).toBe(loads[at + 1]);
  });

  it('has fewer pieces to carry where the chances are as good', () => {
    const near = answer(question).work.choice;
    const value = toKg(near.shown);
    const choose = (...loads: readonly (readonly [number, number])[]) =>
      shown(answer({ ...question, lift: made(...loads) }).work);
    expect(choose([value - 0.05, 9], [value, 9], [value + 0.05, 1])).toBe(value + 0.05);
    expect(choose([value - 0.05, 1], [value, 9], [value + 0.05, 9])).toBe(value - 0.05);
    // of those with as few pieces the lightest, and never one with a plainly smaller chance
    expect(choose([value - 0.05, 1], [value, 1], [value + 0.05, 1])).toBe(value - 0.05);
    expect(choose([value - 15, 0], [value, 9])).toBe(value);
  });

  it('begins carefully where the best load ends too early too often', () => {
    // 52.5 kg has the best chance of exactly ten and ends before them in 41 of 100 sets; 48.75 kg
    // does in 16, the next one in 23
    const ten = inWindow(10, 10);
    const all = loadForWindow(windowQuestion(ten, lift.loads.loads));
    if (all.kind !== 'found') throw new Error(all.kind);
    expect(shown(all.best)).toBe(52.5);
    expect(all.best.before).toBeGreaterThan(0.4);
    const { work, reason, lighter, heavier } = answer(ten);
    expect(reason).toBe('careful-first');
    expect([lighter, work, heavier].map(shown)).toEqual([47.5, 48.75, 50]);
    // where every load ends too early too often, the best one it is
    const only = { ...ten, lift: { ...made([52.5, 1]), intent: ten.lift.intent } };
    expect(answer(only)).toMatchObject({ reason: 'best-chance' });
    expect(shown(answer(only).work)).toBe(52.5);
    // of eight to eleven one in four sets ends too early: that is the best load
    expect(answer(question).reason).toBe('best-chance');
  });

  it('uses no load above the share that is allowed', () => {
    const heavy = inWindow(1, 3, { intensityCap: 0.8 });
    const { work, reason, heavier, lighter } = answer(heavy);
    expect(reason).toBe('capped');
    expect(toKg(work.choice.load)).toBeLessThanOrEqual(0.8 * max);
    expect(heavier).toBeUndefined();
    const { loads } = lift.loads;
    const at = loads.indexOf(work.choice);
    expect(toKg(loads[at + 1]?.load ?? kg(0))).toBeGreaterThan(0.8 * max);
    expect(lighter?.choice).toBe(loads[at - 1]);
    // a window of light loads is not touched by it
    expect(answer(inWindow(20, 30, { intensityCap: 0.8 })).reason).toBe('best-chance');
    expect(shown(answer(inWindow(20, 30, { intensityCap: 0.8 })).work)).toBe(
      shown(answer(inWindow(20, 30)).work),
    );
  });

  it('says capped of the heaviest load that is allowed where that is the best one', () => {
    const free = answer(question).work.choice;
    const cap = (toKg(free.load) + 0.01) / max;
    expect(answer({ ...question, intensityCap: cap })).toMatchObject({ reason: 'capped' });
    expect(answer({ ...question, intensityCap: cap }).work.choice).toBe(free);
    expect(answer({ ...question, intensityCap: cap + 0.1 }).reason).toBe('best-chance');
  });

  it('moves the window by the repetitions that are left', () => {
    const left = answer({ ...question, repsInReserve: 2 }).work;
    expect(left.choice).toBe(answer(inWindow(10, 13)).work.choice);
    expect(windowQuestion({ ...question, repsInReserve: 2 }, []).window).toEqual({
      minReps: 10,
      maxReps: 13,
    });
  });

  it.each([
    ['too heavy', inWindow(100, 110)],
    ['too light', inWindow(1, 1, { posterior: believe(300, 10) })],
    ['too heavy', { ...question, lift: made([90, 1]) }],
    ['no load', inWindow(8, 11, { intensityCap: 0.05 })],
  ])('says why there is none: %s', (words, asked) => {
    const none = workLoad(asked);
    expect(none.kind === 'none' && none.message).toMatch(words);
  });

  it('says that a gap lies around the window', () => {
    const gap = workLoad(
      inWindow(9, 10, {
        lift: {
          ...made([10, 1], [200, 1]),
          intent: { ...lift.intent, window: { minReps: 9, maxReps: 10 } },
        },
      }),
    );
    expect(gap.kind === 'none' && gap.message).toMatch(/falls between two loads/);
  });
});

describe('fixedLoad', () => {
  const limits = limitsFor(client.health, {
    intensity: 'vigorous',
    alone: true,
    date: '2027-03-15',
  });
  const reasons = [{ words: 'It is so.' }, { words: 'And so.' }] as unknown as NonNullable<
    typeof limits.intensityCap
  >['reasons'];
  const fix = (value: number, change: object = {}, asked = question) =>
    fixedLoad(asked, kilos(value), { ...limits, ...change });
  const code = (...args: Parameters<typeof fix>) => {
    const fixed = fix(...args);
    return fixed.kind === 'refused' ? fixed.refusal.code : fixed.kind;
  };

  it('is taken with its neighbours here', () => {
    const fixed = fix(40);
    if (fixed.kind !== 'fixed') throw new Error(fixed.kind);
    expect([fixed.lighter, fixed.work, fixed.heavier].map(shown)).toEqual([38.75, 40, 42.5]);
    const lightest = fix(7.5);
    if (lightest.kind !== 'fixed') throw new Error(lightest.kind);
    expect([lightest.lighter, lightest.work, lightest.heavier].map(shown)).toEqual([
      undefined,
      7.5,
      8.75,
    ]);
  });

  it('is refused above the share that is allowed, by whole percent', () => {
    const cap = (share: number) => ({ intensityCap: { share, reasons } });
    const percent = Math.round((100 * 40) / max);
    expect(code(40, cap(percent / 100))).toBe('fixed');
    expect(code(40, cap((percent - 1) / 100))).toBe('session.load-over-limit');
    const fixed = fix(40, cap(0.3));
    const said = fixed.kind === 'refused' ? fixed.refusal.message.replaceAll(/\s/g, ' ') : '';
    expect(said).toContain(`40 kg is about ${percent} % of today's`);
    expect(said).toMatch(/at most 30 % may be used\. It is so\. And so\.$/);
  });

  it('is refused as a single where none is to be done', () => {
    const never = { maximalSingles: { kind: 'refused', reasons } };
    expect(code(40, never)).toBe('fixed');
    const heaviest = lift.loads.loads.findLast(({ load }) => {
      const fixed = fixedLoad(question, { value: toKg(load), unit: 'kg' }, limits);
      return fixed.kind === 'fixed' && fixed.work.reps.likely === 2;
    });
    const single = lift.loads.loads.find(({ load }) => {
      const fixed = fixedLoad(question, { value: toKg(load), unit: 'kg' }, limits);
      return fixed.kind === 'fixed' && fixed.work.reps.likely === 1;
    });
    expect(heaviest && code(toKg(heaviest.load), never)).toBe('fixed');
    expect(single && code(toKg(single.load), never)).toBe('session.load-is-a-single');
    const refused = single && fix(toKg(single.load), never);
    expect(refused?.kind === 'refused' && refused.refusal.message).toMatch(/It is so\. And so\.$/);
    expect(single && code(toKg(single.load))).toBe('fixed');
  });

  it('is refused where it is nothing, or not made here', () => {
    expect(code(0, {}, { ...question, lift: made([0, 0], [10, 1]) })).toBe('session.load-not-here');
    expect(code(0, {}, { ...question, lift: made([0, 0]) })).toBe('session.load-not-here');
    expect(fix(41)).toMatchObject({ kind: 'refused', refusal: { what: 'load' } });
    expect(fix(0, {}, { ...question, lift: made([0, 0]) })).toMatchObject({
      refusal: { what: 'load' },
    });
    expect(code(41)).toBe('session.load-not-here');
  });
});

describe('chosenLoad', () => {
  const limits = limitsFor(client.health, {
    intensity: 'vigorous',
    alone: true,
    date: '2027-03-15',
  });
  const asked = (value: number | undefined, change: Partial<WorkLoadQuestion> = {}) => {
    const intent = {
      ...lift.intent,
      ...(value !== undefined && { overrules: { load: kilos(value) } }),
    };
    const base = { ...question, ...change };
    return chosenLoad(
      { ...base, lift: { ...base.lift, intent: { ...base.lift.intent, ...intent } } },
      limits,
    );
  };
  const best = shown(answer(question).work) ?? 0;

  it('marks a fixed load that is another one', () => {
    expect(asked(undefined)).toMatchObject({
      kind: 'found',
      reason: 'best-chance',
      overruled: {},
      refused: [],
    });
    expect(asked(best)).toEqual(asked(undefined));
    const fixed = asked(40);
    expect(fixed).toMatchObject({ kind: 'found', reason: 'fixed', refused: [] });
    expect(fixed.kind === 'found' && toKg(fixed.overruled.load?.chosen?.shown ?? kg(0))).toBe(best);
  });

  it('keeps the best one where the fixed one is refused', () => {
    expect(asked(41)).toMatchObject({
      kind: 'found',
      reason: 'best-chance',
      overruled: {},
      refused: [{ code: 'session.load-not-here' }],
    });
  });

  it('is the fixed one where no other would do, and says both reasons where that is refused', () => {
    const heavy = { ...lift, intent: { ...lift.intent, window: { minReps: 100, maxReps: 110 } } };
    const only = (value: number) =>
      chosenLoad(
        {
          ...question,
          lift: { ...heavy, intent: { ...heavy.intent, overrules: { load: kilos(value) } } },
        },
        limits,
      );
    expect(only(40)).toMatchObject({
      kind: 'found',
      reason: 'fixed',
      overruled: { load: { chosen: undefined } },
    });
    const none = only(41);
    expect(none.kind === 'none' && none.message).toMatch(
      /too heavy .*\. Pulldown does not make 41/s,
    );
  });
});
