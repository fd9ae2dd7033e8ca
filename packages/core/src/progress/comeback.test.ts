import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { comeback } from './comeback.ts';
import { barWith } from './gym.testing.ts';

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

  it('says when nothing is light enough', () => {
    const old = { load: kg(21), reps: 5 };
    expect(comeback({ old, layoffDays: 200, loads: bar.loads }).kind).toBe('no-load');
  });
});
