import { describe, expect, it } from 'vitest';
import { type ReachableLoads, reachableLoads } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { enduranceCurves, type SourcedRepCurve } from '../strength/index.ts';
import { barWith, rackOf, sessionOn, stack } from './gym.testing.ts';
import type { LiftSession } from './LiftSession.ts';
import type { LoadAdvice } from './LoadAdvice.ts';
import type { NextLoadQuestion } from './NextLoadQuestion.ts';
import { nextLoad } from './nextLoad.ts';

const on = '2026-03-12';
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const loadOf = (advice: LoadAdvice) => ('load' in advice ? toKg(advice.load.load) : undefined);

describe('nextLoad at its limits', () => {
  const press = { ...stack(), window: { minReps: 8, maxReps: 12 }, on };
  const session = (date: string, reps: readonly number[], load = 60, more: object = {}) =>
    sessionOn(date, kilos(load), reps, more);
  const after = (reps: readonly number[], change: Partial<NextLoadQuestion> = {}) =>
    nextLoad({ ...press, sessions: [session('2026-03-09', reps)], ...change });

  it('goes by the set with the fewest repetitions', () => {
    expect(after([12, 8])).toMatchObject({ because: 'inside-the-window', aim: 9 });
    expect(after([12, 7])).toMatchObject({ because: 'missed', aim: 8 });
    expect(after([11, 11])).toMatchObject({ because: 'inside-the-window', aim: 12 });
    expect(after([12, 12])).toMatchObject({ because: 'top-reached-once', aim: 12 });
    expect(after([13, 12])).toMatchObject({ because: 'top-reached-once', aim: 12 });
  });

  it('raises after one session with two repetitions over the top in every set', () => {
    expect(after([14, 13]).kind).toBe('repeat');
    expect(after([14, 14]).kind).toBe('raise');
    expect(after([13, 13], { rules: { repsOverTop: 1 } }).kind).toBe('raise');
    expect(after([12, 12], { rules: { sessionsAtTop: 1 } }).kind).toBe('raise');
  });

  it('counts sessions at the top in a row with the load of last time', () => {
    const twice = (first: ReturnType<typeof session>, ...more: readonly LiftSession[]) =>
      nextLoad({ ...press, sessions: [first, ...more, session('2026-03-09', [12, 12])] }).kind;
    expect(twice(session('2026-03-02', [12, 12]))).toBe('raise');
    expect(twice(session('2026-03-02', [12, 11]))).toBe('repeat');
    expect(twice(session('2026-03-02', [12, 12], 55))).toBe('repeat');
    expect(twice(session('2026-03-02', [12]), session('2026-03-05', [11]))).toBe('repeat');
    expect(
      twice(session('2026-03-02', [12]), session('2026-03-05', [1], 20, { tags: ['light'] })),
    ).toBe('raise');
    expect(twice(session('2026-03-02', [5]), session('2026-03-05', [12]))).toBe('raise');
  });

  it('comes back after more than the days of a layoff', () => {
    // 23 March is 14 days after the 9th
    expect(after([10], { on: '2026-03-23' }).kind).toBe('repeat');
    const back = after([0], { on: '2026-03-24' });
    if (back.kind !== 'come-back' || back.comeback.kind !== 'comeback') throw new Error(back.kind);
    expect(back.comeback.reps).toBe(1);
    expect(after([10], { on: '2026-03-12', rules: { layoffDays: 2 } }).kind).toBe('come-back');
    const start = (curve?: SourcedRepCurve) => {
      const found = after([10], { on: '2026-06-24', ...(curve && { curve }) });
      return found.kind === 'come-back' ? found.comeback.ideal : undefined;
    };
    expect(start()).not.toBe(start({ ...enduranceCurves['leg-press'], kappa: 20 }));
  });

  it('takes the number of last time where it can be made, otherwise what is just below', () => {
    const rack = rackOf('kg', 50, 55, 65);
    expect(loadOf(after([10], rack))).toBe(55);
    expect(loadOf(after([10], rackOf('kg', 50, 60, 65)))).toBe(60);
    expect(after([10], rackOf('kg', 70, 80))).toMatchObject({
      kind: 'no-loads',
      why: { kind: 'none' },
    });
    const none = { kind: 'none', reason: 'no-weights', message: '' } as unknown as ReachableLoads;
    expect(after([10], { loads: none })).toMatchObject({ kind: 'no-loads', why: { kind: 'none' } });
  });

  it('keeps a load that the body under it has moved by its number', () => {
    // 10 kg on 80 kg were 90; on 81 kg the same belt is 91, and 90 are not made
    const station = {
      kind: 'body',
      id: 'bar',
      name: 'Bar',
      belt: { pieces: [{ weight: kilos(10), pieces: 1 }] },
    } as const;
    const loads = reachableLoads(station, { bodyWeight: kilos(81) });
    const [set] = sessionOn('2026-03-09', kilos(10), [10]).sets;
    const sessions = [
      { ...session('2026-03-09', [10]), sets: [{ ...set, load: kg(90) }] as const },
    ];
    const advice = nextLoad({ ...press, sessions, equipment: station, loads });
    expect(loadOf(advice)).toBe(91);
  });

  it('says what comes next and how far it is, with no chance where nothing is believed', () => {
    const advice = after([10]);
    if (advice.kind !== 'repeat') throw new Error(advice.kind);
    expect(toKg(advice.nextStep?.to.load ?? kg(0))).toBe(65);
    expect(advice.nextStep?.percent).toBeCloseTo(100 / 12, 9);
    expect(advice).not.toHaveProperty('chance');
    const last = after([10], { sessions: [session('2026-03-09', [10], 150)] });
    expect(last).not.toHaveProperty('nextStep');
  });

  it('names the signs that pain is watched for by', () => {
    const advice = after([10], { pain: true });
    expect(advice.kind === 'stop' && advice.signs.map(({ id }) => id).sort()).toEqual([
      'numbness-or-weakness',
      'pop-or-sudden-loss',
      'rising-pain',
      'sharp-or-radiating-pain',
    ]);
  });

  it('passes over a session with one of the tags, whatever else it is tagged', () => {
    const tagged = session('2026-03-10', [1], 20, { tags: ['new-shoes', 'test'] });
    const sessions = [session('2026-03-09', [10]), tagged];
    expect(nextLoad({ ...press, sessions })).toEqual(after([10]));
    expect(nextLoad({ ...press, sessions: [tagged] })).toEqual({ kind: 'no-history' });
  });
});

describe('the step up', () => {
  const top = [12, 12].map((reps, i) => sessionOn(`2026-03-0${i + 5}`, kilos(50), [reps]));
  const raised = (values: readonly number[], change: Partial<NextLoadQuestion> = {}) =>
    nextLoad({
      ...rackOf('kg', ...values),
      sessions: top,
      window: { minReps: 8, maxReps: 12 },
      on,
      ...change,
    });

  it('is the lightest one of 2 to 10 percent', () => {
    expect(loadOf(raised([50, 50.5, 51, 52, 55]))).toBe(51);
    expect(loadOf(raised([50, 50.5, 55]))).toBe(55);
    // only steps under 2 percent: the largest of them
    expect(loadOf(raised([50, 50.25, 50.5, 50.75, 56]))).toBe(50.75);
    expect(raised([50, 55.5]).kind).toBe('reps-first');
    const rules = { stepPercent: { smallest: 1, largest: 12 } };
    expect(loadOf(raised([50, 50.5, 51], { rules }))).toBe(50.5);
    expect(raised([50, 55.5], { rules }).kind).toBe('raise');
  });

  it('begins again at the bottom of the window and says the step and the one after it', () => {
    const advice = raised([50, 52, 54]);
    expect(advice).toMatchObject({ kind: 'raise', aim: 8, percent: 4 });
    expect(advice.kind === 'raise' && advice.nextStep?.percent).toBeCloseTo(200 / 52, 9);
    expect(raised([50, 52])).not.toHaveProperty('nextStep');
    expect(advice).not.toHaveProperty('chance');
  });

  it('waits for as many repetitions as the next load needs, at least the top of the window', () => {
    const near = raised([50, 55.5]);
    if (near.kind !== 'reps-first') throw new Error(near.kind);
    // 11 percent more for eight are asked for after about a dozen
    expect(near.before.aim).toBeGreaterThan(8);
    expect(near.aim).toBe(Math.max(12, near.before.aim));
    const far = raised([50, 60]);
    expect(far.kind === 'reps-first' && far.aim).toBe(
      far.kind === 'reps-first' ? far.before.aim : 0,
    );
    expect(far.kind === 'reps-first' && far.aim).toBeGreaterThan(12);
    const beyond = raised([50, 100]);
    expect(beyond).toMatchObject({ kind: 'reps-first', aim: 12, before: { beyondCounting: true } });
    const curve = { ...enduranceCurves['leg-press'], kappa: 15 };
    const other = raised([50, 60], { curve });
    expect(other.kind === 'reps-first' && other.before.aim).toBeLessThan(
      far.kind === 'reps-first' ? far.before.aim : 0,
    );
  });
});

describe('the way back after a stall', () => {
  const bar = barWith(20, 10, 5, 2.5, 1.25);
  const poor = [
    sessionOn('2026-03-02', kilos(100), [5, 4, 3]),
    sessionOn('2026-03-05', kilos(100), [5, 4, 4]),
    sessionOn('2026-03-09', kilos(100), [4, 4, 4]),
  ];
  const question = { ...bar, sessions: poor, window: { minReps: 5, maxReps: 8 }, on };

  it('is as far as the rules say, with the step back up and what the log shows', () => {
    const advice = nextLoad({ ...question, rules: { resetPercent: 20 }, hoursNeeded: 100 });
    if (advice.kind !== 'reset') throw new Error(advice.kind);
    expect(toKg(advice.load.load)).toBe(80);
    expect(advice.nextStep?.percent).toBe(25);
    expect(toKg(advice.nextStep?.to.load ?? kg(0))).toBe(100);
    expect(advice.aim).toBe(5);
    expect(advice.causes[0]?.id).toBe('too-soon');
    const without = nextLoad(question);
    expect(without.kind === 'reset' && without.causes.map(({ id }) => id)).not.toContain(
      'too-soon',
    );
  });

  it('asks as many sets for their repetitions as were done', () => {
    const four = poor.map((session, i) => ({
      ...session,
      sets: sessionOn('2026-03-02', kilos(100), [5, 5, 5, 4 - i]).sets,
    }));
    const advice = nextLoad({ ...question, sessions: four });
    expect(advice.kind === 'reset' && advice.stall.misses).toBe(3);
  });

  it('is one that the gym can make, or none', () => {
    const heavy = rackOf('kg', 100);
    expect(nextLoad({ ...question, ...heavy, rules: { resetPercent: 0 } }).kind).toBe('reset');
    expect(nextLoad({ ...question, ...heavy })).toMatchObject({
      kind: 'no-loads',
      why: { kind: 'none' },
    });
  });

  it('is not taken before the target was missed often enough since it was met', () => {
    const met = sessionOn('2026-03-02', kilos(100), [5, 5, 5]);
    const sessions = [met, ...poor.slice(1)];
    expect(nextLoad({ ...question, sessions })).toMatchObject({
      kind: 'repeat',
      because: 'missed',
    });
  });
});
