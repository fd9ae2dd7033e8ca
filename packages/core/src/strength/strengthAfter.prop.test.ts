import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import type { PerformedSet } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import { strengthAfter } from './strengthAfter.ts';
import { strengthFrom } from './strengthFrom.ts';

const set: fc.Arbitrary<PerformedSet> = fc.record({
  load: fc.integer({ min: 20, max: 60 }).map((steps) => kg(2.5 * steps)),
  reps: fc.integer({ min: 1, max: 20 }),
  end: fc.oneof(
    fc.constant({ kind: 'failure' } as const),
    fc.record({ kind: fc.constant('reserve' as const), repsLeft: fc.integer({ min: 0, max: 6 }) }),
    fc.record({ kind: fc.constant('more' as const), atLeast: fc.constant(1) }),
  ),
  day: fc.integer({ min: 0, max: 40 }),
  secondsPerRep: fc.constantFrom(2, 3, 5, 8),
});

const prior = priorFor(generalCurve, { kg: 110, doubt: 0.2 });

const cells = { columns: 48, rows: 16 };

describe('strengthAfter', () => {
  it('is the same, set by set, as all the sets at once', () => {
    fc.assert(
      fc.property(fc.array(set, { minLength: 1, maxLength: 4 }), (sets) => {
        const inOrder = [...sets].sort((a, b) => a.day - b.day);
        const [first, ...rest] = inOrder as [PerformedSet, ...PerformedSet[]];
        const start = strengthFrom({ sets: [first], prior, today: first.day, cells });
        if (start.kind !== 'posterior') throw new Error(start.kind);
        const stepwise = strengthAfter(
          rest.reduce(
            (belief, one) => strengthAfter(belief, { sets: [one], today: one.day }),
            start,
          ),
          { sets: [], today: 45 },
        );
        const atOnce = strengthFrom({ sets: inOrder, prior, today: 45, cells });
        if (atOnce.kind !== 'posterior') throw new Error(atOnce.kind);
        const [a, b] = [oneRepMaxKg(stepwise), oneRepMaxKg(atOnce)];
        // each lays its own grid, and both are held to 0.5 % of the exact answer
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(Math.abs(Math.log(a[end] / b[end]))).toBeLessThan(0.01);
        }
        expect(stepwise.binding).toBe(atOnce.binding);
      }),
      { numRuns: 40 },
    );
  });

  it('does not change what it is given', () => {
    fc.assert(
      fc.property(set, set, (first, second) => {
        const start = strengthFrom({
          sets: [first],
          prior,
          today: 40,
          cells: { columns: 16, rows: 8 },
        });
        if (start.kind !== 'posterior') throw new Error(start.kind);
        const copy = structuredClone(start);
        strengthAfter(start, { sets: [{ ...second, day: 41 }], today: 50 });
        expect(start).toEqual(copy);
      }),
      { numRuns: 20 },
    );
  });

  it('refuses a set before the day of the belief, or after today', () => {
    const start = strengthFrom({ sets: [], prior, today: 10, cells }) as StrengthPosterior;
    const learn = (day: number) => () =>
      strengthAfter(start, {
        sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day }],
        today: 12,
      });
    for (const day of [10, 12]) expect(learn(day)).not.toThrow();
    for (const day of [9, 13]) expect(learn(day)).toThrow('strengthAfter: day must be');
  });
});
