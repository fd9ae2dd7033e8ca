import { describe, expect, it } from 'vitest';
import { type Barbell, type PlateStock, waysToLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { chooseRamp } from './chooseRamp.ts';
import type { RampProblem } from './RampChoice.ts';
import { rungsOf } from './rungs.ts';

const bar: Barbell = { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } };
const plate = (value: number, pieces: number, thicknessMm?: number): PlateStock => ({
  weight: { value, unit: 'kg' },
  pieces,
  ...(thicknessMm !== undefined && { thicknessMm }),
});

function waysOf(plates: readonly PlateStock[], sleeveMm?: number) {
  const equipment = sleeveMm === undefined ? bar : { ...bar, sleeveMm };
  const answer = waysToLoad(equipment, { plates }, {}, 3);
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer.ways;
}

function problem(
  plates: readonly PlateStock[],
  work: number,
  targets: readonly number[],
  rest: Partial<RampProblem> & { readonly sleeveMm?: number } = {},
): RampProblem {
  const { sleeveMm, ...over } = rest;
  const ways = waysOf(plates, sleeveMm);
  return {
    targets: targets.map((target) => kg(target)),
    ways: ways.filter(({ load }) => load < kg(work)),
    workWays: ways.filter(({ load }) => load === kg(work)),
    work: kg(work),
    pieceCost: 100,
    growthCost: 0,
    ...over,
  };
}

describe('chooseRamp', () => {
  it('takes the loading of a step that the work load can be built on', () => {
    // 23 a side fits as 14 + 6 + 3 only, 60 mm; the step of 60 kg is 20, or 14 + 6, which stays on
    const plates = [plate(20, 2, 60), plate(14, 2, 20), plate(6, 2, 20), plate(3, 2, 20)];
    const { steps, work, cost } = chooseRamp(problem(plates, 66, [60], { sleeveMm: 60 }));
    const weights = [...steps, work].map(({ loading }) =>
      loading.kind === 'plates'
        ? loading.stacks[0]?.plates.map(({ weight }) => weight.value)
        : undefined,
    );
    expect(weights).toEqual([
      [14, 6],
      [14, 6, 3],
    ]);
    // four pieces on, two more, and six off
    expect(cost).toBe(1200);
  });

  it('takes one step for two targets where going over costs more', () => {
    // 40 is 10 on each end, 60 is 20, the work load 20 + 10. One step of 60 is 150 and 0
    // thousandths off and moves 2 + 2 + 4 pieces; with 40 before it, 100 and 0 and 2 + 4 + 2 + 4
    const two = problem([plate(20, 2), plate(10, 2)], 80, [48, 60], { pieceCost: 5000 });
    const { steps, cost } = chooseRamp(two);
    expect(steps.map(({ load }) => toKg(load))).toEqual([60]);
    expect(cost).toBe(150 ** 2 + 8 * 5000);
  });

  it('tries the forty loads that are nearest to a target, however much pieces cost', () => {
    // the work load is 20 + 10 + 5 + 2.5 + 1 + 0.25 a side: on the way lie 20 and 60 kg, each for
    // nothing, and in steps of 0.5 kg the forty nearest to 40 lie within 10 kg of it
    const plates = [20, 10, 5, 2.5, 2, 1, 0.5].map((value) => plate(value, 2));
    const fine = problem([...plates, plate(0.25, 4)], 97.5, [40], { pieceCost: 1e9 });
    const [step] = chooseRamp(fine).steps;
    expect(Math.abs(toKg(step?.load ?? kg(0)) - 40)).toBeLessThanOrEqual(10);
  });

  it('refuses to choose among nothing', () => {
    const whole = problem([plate(10, 4)], 60, [40]);
    const nothing = [{ targets: [] }, { ways: [] }, { workWays: [] }];
    for (const none of nothing) {
      expect(() => chooseRamp({ ...whole, ...none })).toThrow(/^chooseRamp: there must be/);
    }
  });
});

describe('rungsOf', () => {
  it('gathers the loadings of each load, in their order', () => {
    // 20; 40; 60 as 20 or 10 + 10; 80 as 20 + 10; 100 as 20 + 10 + 10
    const ways = waysOf([plate(20, 2), plate(10, 4)]);
    expect(
      rungsOf(ways).map((rung) => [toKg(rung.load), rung.ways.map((way) => way.loading.pieces)]),
    ).toEqual([
      [20, [0]],
      [40, [2]],
      [60, [2, 4]],
      [80, [4]],
      [100, [6]],
    ]);
  });
});
