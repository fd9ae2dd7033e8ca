import { describe, expect, it } from 'vitest';
import { kg, type LoadValue } from '../load/index.ts';
import type { Equipment, EquipmentUse } from './Equipment.ts';
import { kgBar, kgPlates } from './oracle/exampleGear.ts';
import { reachableLoads } from './reachableLoads.ts';
import { stepUp } from './stepUp.ts';

const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });

function step(equipment: Equipment, from: number, use: EquipmentUse = {}) {
  const answer = stepUp(equipment, reachableLoads(equipment, use), kg(from));
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer;
}

function rack(...weights: readonly number[]): Equipment {
  return {
    kind: 'fixed',
    form: 'dumbbell',
    id: 'rack',
    name: 'Rack',
    weights: weights.map((value) => ({ weight: kilograms(value), pieces: 2 })),
  };
}

describe('stepUp', () => {
  it('bridges 12.5 %, from 40 to 45 with 2.5 kg plates, with repetitions first', () => {
    const answer = step(kgBar(20), 40, { plates: kgPlates([10, 5, 2.5], 4) });
    expect(answer).toMatchObject({ percent: 12.5, size: 'large', difference: kg(5) });
    expect(answer.bridges[0]?.id).toBe('more-repetitions');
    const small = answer.bridges.find(({ id }) => id === 'small-plates');
    // 10 % of 40 kg
    expect(small?.addsAtMost).toBe(kg(4));
  });

  it('takes 6.25 %, from 40 to 42.5 kg dumbbells, as it is', () => {
    expect(step(rack(40, 42.5), 40)).toMatchObject({
      kind: 'step',
      percent: 6.25,
      size: 'ordinary',
      bridges: [],
    });
  });

  it('takes exactly 10 % as it is, and bridges exactly 40 % with repetitions still', () => {
    expect(step(rack(20, 22), 20)).toMatchObject({ percent: 10, size: 'ordinary' });
    expect(step(rack(10, 14), 10)).toMatchObject({ percent: 40, size: 'large' });
    expect(step(rack(10, 14.1), 10)).toMatchObject({ size: 'beyond-repetitions' });
  });

  it('does not foretell the next load from repetitions when it is twice as heavy', () => {
    const answer = step(rack(2.5, 5), 2.5);
    expect(answer).toMatchObject({ percent: 100, size: 'beyond-repetitions' });
    const ids = answer.bridges.map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining(['slower-lowering', 'one-side', 'add-on', 'other-ratio']),
    );
    expect(answer.bridges[0]?.message).toContain('20');
  });

  it('counts the body in: 2.5 kg more on a belt with 10 at 80 kg is 2.8 %', () => {
    const station = { kind: 'body', id: 'bar', name: 'Chin-up bar', belt: {} } as const;
    const use = { bodyWeight: kilograms(80), plates: kgPlates([10, 2.5], 1) };
    const answer = step(station, 90, use);
    expect(answer.size).toBe('ordinary');
    expect(answer.percent).toBeCloseTo(250 / 90, 12);
  });

  it('offers an add-on for a stack whose first step is large', () => {
    const stack = {
      kind: 'stack',
      id: 'row',
      name: 'Row',
      first: kilograms(5),
      rest: [{ weight: kilograms(5), pieces: 9 }],
      pulleyRatio: 1,
    } as const;
    expect(step(stack, 10).bridges.map(({ id }) => id)).toContain('add-on');
  });

  it('names the end of the rack and refuses a load of nothing', () => {
    const loads = reachableLoads(rack(20));
    expect(stepUp(rack(20), loads, kg(20))).toMatchObject({
      kind: 'none',
      reason: 'nothing-to-add',
    });
    expect(() => stepUp(rack(20), loads, kg(0))).toThrow(/stepUp: from in steps/);
  });
});
