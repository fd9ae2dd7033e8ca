import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repsAtShare } from './repsAtShare.ts';
import { shareForReps } from './shareForReps.ts';

const curve = fc.record({
  kappa: fc.double({ min: 1, max: 300, noNaN: true }),
  alpha: fc.oneof(fc.constantFrom(0.5, 1), fc.double({ min: 0.25, max: 2, noNaN: true })),
});
const capacity = fc.double({ min: 0.2, max: 1, noNaN: true });
const reps = fc.double({ min: 1, max: 100, noNaN: true });

describe('shareForReps', () => {
  it('is the inverse of repsAtShare', () => {
    fc.assert(
      fc.property(reps, curve, capacity, (count, bend, left) => {
        const share = shareForReps(count, bend, left);
        // the root is found to a few units in the last place, and reps have slope kappa in it
        expect(Math.abs(repsAtShare(Math.min(share, left), bend, left) - count)).toBeLessThan(
          1e-9 * count * count,
        );
      }),
    );
  });

  it('never rises with the repetitions', () => {
    fc.assert(
      fc.property(reps, reps, curve, (a, b, bend) => {
        const [few, many] = a < b ? [a, b] : [b, a];
        expect(shareForReps(many, bend)).toBeLessThanOrEqual(shareForReps(few, bend) + 1e-12);
      }),
    );
  });
});
