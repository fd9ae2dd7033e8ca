import { describe, expect, it } from 'vitest';
import { kg, type Load, toKg } from '../load/index.ts';
import { bodyLoad } from './bodyLoad.ts';

function load(...args: Parameters<typeof bodyLoad>) {
  const body = bodyLoad(...args);
  if (body.kind === 'refused') throw new Error(body.message);
  return body;
}

describe('bodyLoad', () => {
  it('rises as help falls', () => {
    expect(bodyLoad(kg(74), kg(-30))).toMatchObject({ kind: 'load', load: kg(44) });
    expect(load(kg(74), kg(-25)).load).toBe(kg(49));
    expect(load(kg(74), kg(-30)).shareOfBody).toBeCloseTo(44 / 74, 12);
  });

  it('counts the belt in whole: 2.5 kg on 85 + 15 is 2.5 % of what is lifted', () => {
    const [before, after] = [load(kg(85), kg(15)).load, load(kg(85), kg(17.5)).load];
    expect((100 * (after - before)) / before).toBe(2.5);
  });

  it('is a range over the positions of a press-up', () => {
    // published support, top and bottom: 69 and 75 % with the feet, 54 and 62 % with the knees down
    const feet = load(kg(70), kg(0), { low: 0.69, high: 0.75 });
    expect([feet.range.low, feet.load, feet.range.high].map(toKg)).toEqual([48.3, 50.4, 52.5]);
    const knees = load(kg(70), kg(0), { low: 0.54, high: 0.62 });
    expect([knees.range.low, knees.load, knees.range.high].map(toKg)).toEqual([37.8, 40.6, 43.4]);
  });

  it('refuses help of the whole body weight or more', () => {
    expect(bodyLoad(kg(90), kg(-90))).toMatchObject({
      kind: 'refused',
      reason: 'assistance-over-body-weight',
    });
    expect(bodyLoad(kg(90), kg(-95)).kind).toBe('refused');
    expect(load(kg(90), kg(-89.5)).load).toBe(kg(0.5));
  });

  it('refuses help that leaves nothing in the lightest position', () => {
    // 60 % of 80 kg is 48 kg
    const push = { low: 0.6, high: 0.7 };
    expect(bodyLoad(kg(80), kg(-48), push).kind).toBe('refused');
    expect(load(kg(80), kg(-47.5), push).range).toEqual({ low: kg(0.5), high: kg(8.5) });
  });

  it('refuses a body of no weight and shares beyond the body', () => {
    expect(() => bodyLoad(kg(0), kg(10))).toThrow(RangeError);
    expect(() => bodyLoad(Number.NaN as Load, kg(10))).toThrow(RangeError);
    expect(() => bodyLoad(kg(80), kg(0), { low: 0.5, high: 1.2 })).toThrow(RangeError);
  });
});
