import { describe, expect, it } from 'vitest';
import { kg, type Load } from '../../load/index.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { requireSets } from './requireSets.ts';

const check =
  (part: Partial<PerformedSet>, firstDay = 0, today = 10) =>
  () => {
    const set: PerformedSet = { load: kg(50), reps: 8, end: { kind: 'failure' }, day: 5, ...part };
    requireSets('learn', [set], firstDay, today);
  };
const end = (kind: 'reserve' | 'more', count: number): Partial<PerformedSet> => ({
  end: kind === 'reserve' ? { kind, repsLeft: count } : { kind, atLeast: count },
});

describe('requireSets', () => {
  it('takes every number at the limits of its range', () => {
    for (const part of [
      { load: 1 as Load },
      { reps: 0 },
      { reps: 200 },
      { day: 0 },
      { day: 10 },
      { capacity: Number.MIN_VALUE },
      { capacity: 1 },
      { secondsPerRep: 0.2 },
      { secondsPerRep: 120 },
      end('reserve', 0),
      end('reserve', 100),
      end('more', 0),
      end('more', 100),
    ]) {
      expect(check(part)).not.toThrow();
    }
    expect(check({ day: 0.5 }, 0, 0)).not.toThrow();
  });

  it('names what lies beyond', () => {
    for (const [name, part] of [
      ['load', { load: 0 as Load }],
      ['reps', { reps: -1 }],
      ['reps', { reps: 201 }],
      ['day', { day: -0.5 }],
      ['day', { day: 11 }],
      ['capacity', { capacity: 0 }],
      ['capacity', { capacity: 1.01 }],
      ['secondsPerRep', { secondsPerRep: 0.19 }],
      ['secondsPerRep', { secondsPerRep: 121 }],
      ['repsLeft', end('reserve', -1)],
      ['repsLeft', end('reserve', 101)],
      ['atLeast', end('more', -1)],
      ['atLeast', end('more', 101)],
    ] as const) {
      expect(check(part)).toThrow(`learn: ${name} must be`);
    }
    expect(check({}, 5, 4)).toThrow('learn: today must be');
  });
});
