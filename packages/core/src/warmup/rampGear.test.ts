import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { rampGear } from './rampGear.ts';

const bar = {
  kind: 'barbell',
  id: 'bar',
  name: 'Bar',
  bar: { value: 20, unit: 'kg' },
} as const;

function heaviestStep(work: number, ...plates: readonly number[]): number {
  const use = {
    plates: plates.map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 4 })),
  };
  const gear = rampGear({
    equipment: bar,
    use,
    work: kg(work),
    workShare: 0.8,
    experience: 'trained',
  });
  if (gear.kind !== 'gear') throw new Error(gear.reason);
  return Math.max(...gear.lighter.map(({ load }) => toKg(load)));
}

describe('rampGear', () => {
  it('leaves out steps that are all but the work load', () => {
    // 94 % of 82.5 kg is 77.55 kg: 80 kg is too near, 77.5 kg is not
    expect(heaviestStep(82.5, 20, 10, 5, 2.5, 1.25)).toBe(77.5);
  });

  it('takes such a step where there is no other', () => {
    // 20 kg is 95.2 % of 21 kg
    expect(heaviestStep(21, 0.5)).toBe(20);
  });
});
