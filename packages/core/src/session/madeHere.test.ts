import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { isSameWarmUp } from './isSameWarmUp.ts';
import { liftOf } from './liftOf.ts';
import { loadBehindNumber } from './loadBehindNumber.ts';
import { madeHere } from './madeHere.ts';
import { setSeconds } from './setSeconds.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

function lift(change: object = {}) {
  const found = liftOf({ ...pulldown, ...change }, gym, client.bodyWeight);
  if (found.kind !== 'lift') throw new Error(found.message);
  return found;
}

describe('madeHere', () => {
  const tower = lift();
  const nearest = (value: number, unit: 'kg' | 'lb' = 'kg') => {
    const made = madeHere(tower, { value, unit });
    return 'code' in made ? made.message.replaceAll(/\s/g, ' ') : toKg(made.shown);
  };

  it('is the load whose number is asked for', () => {
    // the first plate is 7.5 kg, and two pieces of 1.25 kg lie on top
    expect(nearest(7.5)).toBe(7.5);
    expect(nearest(8.75)).toBe(8.75);
  });

  it('names the nearest numbers on both sides, or the one that there is', () => {
    expect(nearest(9)).toMatch(/does not make 9 kg here\. Nearest to it: 8\.75 kg and 10 kg\.$/);
    expect(nearest(5)).toMatch(/Nearest to it: 7\.5 kg\.$/);
    expect(nearest(500)).toMatch(/Nearest to it: 100 kg\.$/);
    expect(nearest(20, 'lb')).toMatch(
      /does not make 20 lb here\. Nearest to it: ≈ 19\.29 lb and ≈ 22\.05 lb\.$/,
    );
    expect(madeHere(tower, kilos(9))).toMatchObject({
      what: 'load',
      code: 'session.load-not-here',
    });
  });
});

describe('loadBehindNumber', () => {
  it('reads a number that can be made from the list, others off the line through it', () => {
    const halving = gym.equipment.map((item) =>
      item.kind === 'stack' ? { ...item, pulleyRatio: 2 } : item,
    );
    const found = liftOf(pulldown, { ...gym, equipment: halving }, client.bodyWeight);
    if (found.kind !== 'lift') throw new Error(found.message);
    for (const shown of [10, 41, 500]) {
      expect(toKg(loadBehindNumber(found.loads, kg(shown)))).toBeCloseTo(shown / 2, 9);
    }
  });

  it('goes up one by one from the only load that there is', () => {
    const [only] = lift().loads.loads;
    const list = { ...lift().loads, loads: [{ ...only, load: kg(5), shown: kg(10) }] as const };
    expect(loadBehindNumber(list, kg(10))).toBe(kg(5));
    expect(loadBehindNumber(list, kg(12.5))).toBe(kg(7.5));
  });

  it('adds what is on the belt to the body', () => {
    const chin = lift({ exercise: 'chin-up', equipment: 'station' });
    expect(loadBehindNumber(chin.loads, kg(3.3))).toBe(kg(81.3));
  });
});

describe('setSeconds', () => {
  it('is as long as its repetitions in whole numbers, both sides of a one-sided lift', () => {
    expect(setSeconds(lift(), 8)).toBe(48);
    expect(setSeconds(lift(), 7.5)).toBe(48);
    expect(setSeconds(lift(), 7.4)).toBe(42);
    const row = lift({ exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells' });
    expect(setSeconds(row, 8)).toBe(96);
    const pause = { ...pulldown.tempo, pauseAfterLowerSeconds: 1, pauseAfterLiftSeconds: 1 };
    expect(setSeconds(lift({ tempo: pause }), 2)).toBe(16);
  });
});

describe('isSameWarmUp', () => {
  const [one, two] = lift().loads.loads;
  const step = (load: typeof one, reps: number) => ({ load, reps });
  const ramp = (...steps: readonly ReturnType<typeof step>[]) =>
    ({ kind: 'ramp', steps }) as unknown as Parameters<typeof isSameWarmUp>[1];
  const set = (value: number, reps: number) => ({ load: kilos(value), reps });

  it('compares numbers and repetitions, set by set', () => {
    if (!two) throw new Error('one load');
    const chosen = ramp(step(one, 5), step(two, 3));
    expect(isSameWarmUp([set(7.5, 5), set(8.75, 3)], chosen)).toBe(true);
    expect(isSameWarmUp([set(7.5, 5), set(8.75, 4)], chosen)).toBe(false);
    expect(isSameWarmUp([set(7.5, 5), set(10, 3)], chosen)).toBe(false);
    expect(isSameWarmUp([set(7.5, 5)], chosen)).toBe(false);
    expect(isSameWarmUp([set(7.5, 5), set(8.75, 3), set(10, 1)], chosen)).toBe(false);
  });

  it('takes no warm-up for the same as none', () => {
    const none = { kind: 'no-ramp' } as unknown as Parameters<typeof isSameWarmUp>[1];
    expect(isSameWarmUp([], none)).toBe(true);
    expect(isSameWarmUp([set(7.5, 5)], none)).toBe(false);
    expect(isSameWarmUp([], ramp(step(one, 5)))).toBe(false);
  });
});
