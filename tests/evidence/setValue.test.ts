import { describe, expect, it } from 'vitest';
import { setValue } from '../../packages/core/src/session/setValue.ts';
import { readReference } from './readReference.ts';

const { rows } = readReference('volume-dose');
const effect = (quantity: string) => Number(rows.find((row) => row[1] === quantity)?.[2]);

describe('what sets are worth under a time limit', () => {
  it('goes through the published effect sizes, at the middle of each range of sets', () => {
    expect(setValue(0)).toBe(0);
    expect(setValue(1)).toBeCloseTo(effect('hypertrophy ES, 1 set'), 9);
    expect(setValue(2.5)).toBeCloseTo(effect('hypertrophy ES, 2-3 sets'), 9);
    expect(setValue(5)).toBeCloseTo(effect('hypertrophy ES, 4-6 sets'), 9);
    expect(setValue(9) - setValue(8)).toBeCloseTo(effect('ES per added weekly set'), 9);
  });

  it('gives more for every set, and less for each than for the one before', () => {
    const gains = Array.from({ length: 12 }, (_, sets) => setValue(sets + 1) - setValue(sets));
    expect(gains.every((gain) => gain > 0)).toBe(true);
    expect(gains.every((gain, at) => gain <= (gains[at - 1] ?? gain) + 1e-12)).toBe(true);
  });
});
