import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { shareForReps } from '../strength/index.ts';
import { comeback } from './comeback.ts';
import { barWith, rackOf } from './gym.testing.ts';

const bar = barWith(20, 10, 5, 2.5, 1.25);
const back = (layoffDays: number, illness = false) => {
  const answer = comeback({
    old: { load: kg(100), reps: 5 },
    layoffDays,
    loads: bar.loads,
    illness,
  });
  if (answer.kind === 'no-load') throw new Error(answer.message);
  return answer;
};

describe('comeback', () => {
  // ranges from reports of lifters and coaches; the longest break is judgement
  it.each([
    [10, 90, 100],
    [42, 75, 90],
    [210, 50, 75],
  ])('begins again after %i days between %i and %i of 100 kg', (days, low, high) => {
    const start = toKg(back(days).start.load);
    expect(start).toBeGreaterThanOrEqual(low);
    expect(start).toBeLessThanOrEqual(high);
  });

  it('does not take ten days for a loss of strength', () => {
    expect(back(10).strengthKept.likely).toBe(1);
  });

  it('begins after half a lifetime as after ten years: what can be lost is lost', () => {
    expect(back(26_970)).toEqual(back(9000));
  });

  it('never begins heavier after a longer break', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let days = 0; days <= 400; days += 1) {
      const { start } = back(days);
      expect(start.load).toBeLessThanOrEqual(before);
      before = start.load;
    }
  });

  it('leaves repetitions, cuts sets and climbs in steps of a tenth at most to the old load', () => {
    const { repsInReserve, setsShare, weeks } = back(210);
    expect(repsInReserve).toBe(3);
    expect(setsShare).toBeLessThan(1);
    expect(weeks.at(-1)?.load).toBe(kg(100));
    // loads are rounded down to 2.5 kg, so a step may look larger by that much
    for (const [i, { load }] of weeks.slice(1).entries()) {
      expect(toKg(load)).toBeLessThanOrEqual(1.1 * toKg(weeks[i]?.load ?? kg(0)) + 2.5);
    }
  });

  it('defers after a fever: symptom-free first, a physician for signs of heart or lungs', () => {
    const { cautions, watchFor } = back(10, true);
    expect(cautions[0]?.ask).toEqual(['physician']);
    expect(watchFor.map(({ id }) => id)).toContain('chest-discomfort');
    expect(back(10).cautions).toEqual([]);
  });

  it('keeps what a curve of loss with a delay of two weeks leaves, in a band of half the loss', () => {
    // 114 days: 0.35 · (1 - e^-1) = 0.2212422 of ln(one-rep max)
    const { strengthKept, ideal } = back(114);
    expect(strengthKept.likely).toBeCloseTo(Math.exp(-0.2212422), 6);
    expect(strengthKept.low).toBeCloseTo(Math.exp(-0.2212422 * (1 + 0.5 * 1.2815516)), 6);
    expect(strengthKept.high).toBeCloseTo(Math.exp(-0.2212422 * (1 - 0.5 * 1.2815516)), 6);
    expect(strengthKept.level).toBe(0.8);
    // five repetitions with three left are a set of eight to failure
    const eased = shareForReps(8) / shareForReps(5);
    expect(toKg(ideal)).toBeCloseTo(100 * Math.exp(-0.2212422) * eased, 4);
  });

  it('leaves two repetitions and three quarters of the sets up to two weeks, then three and half', () => {
    expect(back(14)).toMatchObject({ repsInReserve: 2, setsShare: 0.75, reps: 5 });
    expect(back(15)).toMatchObject({ repsInReserve: 3, setsShare: 0.5, reps: 5 });
    expect(toKg(back(0).ideal)).toBeCloseTo((100 * shareForReps(7)) / shareForReps(5), 6);
  });

  it('climbs by a tenth a week from the load that follows, rounded down to what is here', () => {
    const { ideal, weeks } = back(210);
    const wanted = [0, 1, 2, 3, 4, 5].map((week) => Math.min(100, toKg(ideal) * 1.1 ** week));
    const down = wanted.map((kilograms) => 20 + 2.5 * Math.floor((kilograms - 20) / 2.5));
    expect(weeks.map(({ load }) => toKg(load))).toEqual(down.slice(0, 1 + down.indexOf(100)));
    expect(back(0).weeks.length).toBeLessThan(weeks.length);
  });

  it('plans half a year at most', () => {
    // with so little endurance three repetitions left are a tenth of the load and less: ten times
    // a tenth more each week takes 25 weeks and more
    const fine = rackOf('kg', ...Array.from({ length: 100 }, (_, i) => i + 1));
    const curve = { kappa: 0.5, alpha: 0.5 };
    const far = comeback({
      old: { load: kg(100), reps: 1 },
      layoffDays: 40,
      loads: fine.loads,
      curve,
    });
    if (far.kind === 'no-load') throw new Error(far.message);
    expect(far.weeks).toHaveLength(26);
    expect(far.weeks.at(-1)?.load).toBeLessThan(kg(100));
  });

  it('watches for signs of heart and lungs after an illness, and only then', () => {
    expect(back(10, true).watchFor.map(({ id }) => id)).toEqual([
      'chest-discomfort',
      'fainting-or-dizziness',
      'breathless-or-palpitations',
    ]);
    expect(back(10).watchFor).toEqual([]);
  });

  it('begins with the lightest load where that is just light enough', () => {
    const { ideal } = back(200);
    const start = (lightest: number) => {
      const rack = rackOf('kg', lightest, 100);
      const answer = comeback({
        old: { load: kg(100), reps: 5 },
        layoffDays: 200,
        loads: rack.loads,
      });
      return answer.kind;
    };
    expect(start(toKg(ideal))).toBe('comeback');
    expect(start(toKg(ideal) + 0.01)).toBe('no-load');
  });

  it('says when nothing is light enough', () => {
    const old = { load: kg(21), reps: 5 };
    expect(comeback({ old, layoffDays: 200, loads: bar.loads }).kind).toBe('no-load');
  });

  it('asks about no illness where none was named, and is none where nothing can be loaded', () => {
    const question = { old: { load: kg(100), reps: 5 }, layoffDays: 40 };
    expect(comeback({ ...question, loads: bar.loads })).toMatchObject({
      cautions: [],
      watchFor: [],
    });
    const none = { kind: 'none', reason: 'no-pair', message: '' } as const;
    expect(comeback({ ...question, loads: none }).kind).toBe('no-load');
  });

  it('has other words for a short break than for a long one', () => {
    expect(back(14).says).toMatch(/^A break this short/);
    expect(back(15).says).toMatch(/^Begin well below/);
  });
});
