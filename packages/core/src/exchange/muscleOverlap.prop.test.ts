import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { muscleOverlap } from './muscleOverlap.ts';

const exercise = fc.constantFrom(...exercises);

describe('laws of the overlap', () => {
  it('is the same both ways, from 0 to 1, and 1 with itself', () => {
    fc.assert(
      fc.property(exercise, exercise, (a, b) => {
        const overlap = muscleOverlap(a, b);
        expect(overlap).toBeCloseTo(muscleOverlap(b, a), 9); // sums in another order
        expect(overlap).toBeGreaterThanOrEqual(0);
        expect(overlap).toBeLessThan(1 + 1e-9);
        expect(muscleOverlap(a, a)).toBeCloseTo(1, 9);
      }),
    );
  });

  // Curl: biceps 0.45, brachialis 0.3, brachioradialis 0.15, grip 0.1; cable row: biceps 0.1,
  // brachialis 0.09, brachioradialis 0.04, grip 0.05. The smaller ones add up to 0.28.
  it('by hand: curl and cable row', () => {
    const [curl, row] = ['dumbbell-curl', 'cable-row'].map((id) =>
      exercises.find((candidate) => candidate.id === id),
    );
    expect(curl && row && muscleOverlap(curl, row)).toBeCloseTo(0.28, 9);
  });
});
