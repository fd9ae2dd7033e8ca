import { describe, expect, it } from 'vitest';
import { targetStep } from './targetStep.ts';

const bar = { value: 20, unit: 'kg' } as const;
const plates = [
  { weight: { value: 5, unit: 'kg' }, pieces: 4 },
  { weight: { value: 2.5, unit: 'kg' }, pieces: 2 },
  { weight: { value: 1.25, unit: 'kg' }, pieces: 1 },
  { weight: { value: 10, unit: 'lb' }, pieces: 2 },
] as const;
const from = (value: number, unit: 'kg' | 'lb', direction: 1 | -1) =>
  targetStep({ value, unit }, bar, plates, direction);

describe('targetStep', () => {
  it('moves by the smallest pair, counted from the bar', () => {
    expect(from(60, 'kg', 1)).toEqual({ value: 65, unit: 'kg' });
    expect(from(61, 'kg', -1)).toEqual({ value: 60, unit: 'kg' });
  });

  it('moves in the unit of the load', () => {
    expect(from(135, 'lb', 1)).toEqual({ value: 140, unit: 'lb' });
  });

  it('leaves it to the plain step where no pair has that unit', () => {
    expect(targetStep({ value: 60, unit: 'lb' }, bar, plates.slice(0, 3), 1)).toBeNull();
  });
});
