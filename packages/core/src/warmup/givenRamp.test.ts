import { describe, expect, it } from 'vitest';
import { type Equipment, type ReachableLoad, reachableLoads } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { type GivenStep, givenRamp } from './givenRamp.ts';
import type { RampPlan, RampQuestion } from './Ramp.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const bar: Equipment = { kind: 'barbell', id: 'bar', name: 'Bar', bar: kilograms(20) };
const use = { plates: [20, 10, 5].map((value) => ({ weight: kilograms(value), pieces: 8 })) };
const question: RampQuestion = {
  equipment: bar,
  use,
  work: kg(100),
  workShare: 0.8,
  experience: 'trained',
  secondsPerPiece: 10,
};
const made = (load: number): ReachableLoad => {
  const list = reachableLoads(bar, use);
  const found = list.kind === 'loads' && list.loads.find((one) => one.load === kg(load));
  if (!found) throw new Error(`no ${load} kg`);
  return found;
};
const step = (load: number, reps: number, restSeconds?: number): GivenStep => ({
  load: made(load),
  reps,
  ...(restSeconds !== undefined && { restSeconds }),
});
const ramp = (given: readonly GivenStep[], rest: Partial<RampQuestion> = {}): RampPlan => {
  const plan = givenRamp({ ...question, ...rest }, given);
  if (plan.kind !== 'ramp') throw new Error(plan.message);
  return plan;
};

describe('givenRamp', () => {
  it('keeps loads, repetitions and rests as they were fixed', () => {
    const plan = ramp([step(20, 12, 15), step(80, 5, 30)]);
    expect(
      plan.steps.map(({ load, reps, restSeconds }) => [toKg(load.load), reps, restSeconds]),
    ).toEqual([
      [20, 12, 15],
      [80, 5, 30],
    ]);
    // 12 and 5 repetitions of 2 s, 15 and 30 s of rest, nothing to put on for the first set
    expect(plan.minutes).toBe((24 + 15 + 10 + 30) / 60);
    expect(plan.steps.map(({ seconds }) => seconds)).toEqual([24, 10]);
    expect(plan.reps).toBe(17);
    expect(plan.aboveWork).toEqual({ kind: 'off' });
    expect(plan.capacityKept.level).toBe(0.8);
  });

  it('rests by purpose, by what the hands have to do, and two minutes before the work', () => {
    const { steps, changeToWork, piecesHandled, stripDown } = ramp([
      step(20, 5),
      step(60, 3),
      step(90, 1),
    ]);
    // to 60 kg two plates at 10 s; to 90 four less one pair: 20 + 10 + 5 a side; 100 is 20 + 20
    expect(steps.map(({ purpose }) => purpose)).toEqual(['circulation', 'rehearsal', 'primer']);
    expect(steps.map(({ change }) => change.pieces)).toEqual([0, 2, 4]);
    expect(steps.map(({ restSeconds }) => restSeconds)).toEqual([30, 45, 120]);
    expect(changeToWork.pieces).toBe(6);
    expect(stripDown.pieces).toBe(4);
    expect(piecesHandled).toBe(0 + 2 + 4 + 6 + 4);
  });

  it('rests as long as the change of load takes, in whole fives', () => {
    // two plates at 33 s are 66 s, so 70
    expect(ramp([step(20, 5), step(60, 3)], { secondsPerPiece: 33 }).steps[0]?.restSeconds).toBe(
      70,
    );
    expect(ramp([step(20, 5), step(60, 3)], { secondsPerPiece: 35 }).steps[0]?.restSeconds).toBe(
      70,
    );
    // four plates at 60 s from 20 kg to the work load are more than two minutes
    expect(ramp([step(20, 5)], { secondsPerPiece: 60 }).steps[0]?.restSeconds).toBe(240);
  });

  it('counts the first change of load where the ramp does not open with the empty bar', () => {
    // two plates at 10 s, three repetitions of 2 s, 30 s of rest
    expect(ramp([step(60, 3, 30)]).minutes).toBe((20 + 6 + 30) / 60);
  });

  it('goes over to the loading of the work load that it is given', () => {
    const tens = made(60);
    const given = {
      ...made(100),
      loading: {
        kind: 'plates',
        stacks: (['left', 'right'] as const).map((place) => ({
          place,
          plates: new Array(4).fill({ weight: kilograms(10) }),
        })),
        pieces: 8,
      },
    } as const;
    const plan = givenRamp(question, [{ load: tens, reps: 3 }], given);
    if (plan.kind !== 'ramp') throw new Error(plan.message);
    expect(plan.work).toBe(given);
    // 60 kg has a 20 on each end: two plates off, eight on
    expect(plan.changeToWork.pieces).toBe(10);
    expect(plan.stripDown.pieces).toBe(8);
  });

  it('says so when what was fixed costs too much, and keeps it', () => {
    const codes = (plan: RampPlan) => plan.notes.map(({ code }) => code);
    const costly = ramp([step(90, 8, 0)]);
    expect(costly.capacityKept.likely).toBeLessThan(0.97);
    expect(costly.steps[0]?.reps).toBe(8);
    expect(codes(costly)).toEqual(['warmup.no-injury-data', 'warmup.capacity-not-kept']);
    expect(codes(ramp([step(20, 5, 60)]))).toEqual(['warmup.no-injury-data']);
    const leastCapacity = costly.capacityKept.likely;
    expect(codes(ramp([step(90, 8, 0)], { leastCapacity }))).toEqual(['warmup.no-injury-data']);
  });

  it('has nothing to ramp without a step', () => {
    const none = givenRamp(question, []);
    expect(none).toMatchObject({
      kind: 'no-ramp',
      reason: 'as-asked',
      changeToWork: { pieces: 4 },
    });
  });

  it('passes on a work load that cannot be made', () => {
    expect(givenRamp({ ...question, work: kg(101) }, [])).toMatchObject({
      kind: 'none',
      reason: 'work-load-not-reachable',
    });
  });

  it('refuses steps that are no warm-up', () => {
    for (const [wrong, name] of [
      [step(100, 1), 'load'],
      [step(20, 0), 'reps'],
      [step(20, 51), 'reps'],
      [step(20, 5, -1), 'restSeconds'],
      [step(20, 5, 1801), 'restSeconds'],
    ] as const) {
      expect(() => givenRamp(question, [wrong])).toThrow(new RegExp(`^givenRamp: ${name} `));
    }
    expect(ramp([step(20, 50, 1800)]).reps).toBe(50);
    expect(ramp([step(20, 1, 0)]).reps).toBe(1);
  });
});
