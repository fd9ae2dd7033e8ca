import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { client } from './boathouse.testing.ts';
import { loweringsLeft } from './loweringsLeft.ts';

const usual = limitsFor(client.health, {
  intensity: 'vigorous',
  alone: true,
  date: '2027-03-15',
  loweringHeavy: true,
});
const limits = { ...usual, hardLowerings: { count: 6, reasons: [] } };
const pull = { direct: { lats: 0.6, 'teres-major': 0.2 } };
const lower = (maxLowerings: number) => ({ kind: 'lower', secondsEach: 5, maxLowerings }) as const;
const hold = { kind: 'hold', at: 'middle', maxSeconds: 20 } as const;
const left = (...before: Parameters<typeof loweringsLeft>[2]) =>
  loweringsLeft(limits, pull, before).hardLowerings?.count;

describe('loweringsLeft', () => {
  it('takes off what earlier chains ask of the same prime movers', () => {
    expect(left()).toBe(6);
    expect(left({ exercise: pull, stages: [hold, lower(4)] })).toBe(2);
    expect(left({ exercise: pull, stages: [lower(2), hold, lower(1)] })).toBe(3);
    expect(left({ exercise: { direct: { chest: 1 } }, stages: [lower(4)] })).toBe(6);
  });

  it('goes by the muscle that has had most, and never below none', () => {
    const lats = { exercise: { direct: { lats: 1 } }, stages: [lower(3)] };
    const teres = { exercise: { direct: { 'teres-major': 1 } }, stages: [lower(2)] };
    expect(left(lats, teres)).toBe(3);
    expect(left(lats, lats)).toBe(0);
    expect(left(lats, lats, teres, lats)).toBe(0);
  });

  it('changes nothing where lowerings are not limited, and nothing else', () => {
    const { hardLowerings: _, ...free } = limits;
    const before = [{ exercise: pull, stages: [lower(4)] }];
    expect(loweringsLeft(free, pull, before)).toBe(free);
    expect(loweringsLeft(limits, pull, before)).toEqual({
      ...limits,
      hardLowerings: { count: 2, reasons: [] },
    });
  });
});
