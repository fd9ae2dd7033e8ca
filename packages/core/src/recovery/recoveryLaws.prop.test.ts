import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { testExercise } from './exercise.testing.ts';
import { hoursUntilReady } from './hoursUntilReady.ts';
import { muscleDose } from './muscleDose.ts';
import type { TrainedSets, TrainingStatus } from './TrainedSets.ts';
import { unaccustomedShare } from './unaccustomedShare.ts';

const exercise = testExercise({ vasti: 1 });
const status = fc.constantFrom<TrainingStatus>('new', 'recreational', 'trained');
const days = fc.array(fc.integer({ min: 0, max: 180 }), { maxLength: 12 });
const work = fc.record({
  exercise: fc.constant(exercise),
  sets: fc.integer({ min: 1, max: 12 }),
  repsInReserve: fc.integer({ min: 0, max: 6 }),
  stagesPastFailure: fc.integer({ min: 0, max: 3 }),
  loweringHeavy: fc.boolean(),
  likeSessionsDaysAgo: days,
});
const likely = (sets: TrainedSets, who: TrainingStatus) =>
  hoursUntilReady(muscleDose([sets], who)[0]?.hardSets ?? 0, who).likely;

/** The orders that studies agree on, whatever the sizes (`recovery_time_course`). */
describe('hours until ready', () => {
  it('never fall with more sets', () => {
    fc.assert(
      fc.property(work, status, (sets, who) => {
        const more = { ...sets, sets: sets.sets + 1 };
        expect(likely(more, who)).toBeGreaterThan(likely(sets, who));
      }),
    );
  });

  it('are no shorter after failure than short of it (Vieira 2022)', () => {
    fc.assert(
      fc.property(work, status, (sets, who) => {
        expect(likely({ ...sets, repsInReserve: 0 }, who)).toBeGreaterThanOrEqual(
          likely(sets, who),
        );
      }),
    );
  });

  it('are longer past failure than at it (Ahtiainen 2003)', () => {
    fc.assert(
      fc.property(work, status, (sets, who) => {
        const further = { ...sets, stagesPastFailure: sets.stagesPastFailure + 1 };
        expect(likely(further, who)).toBeGreaterThan(likely(sets, who));
      }),
    );
  });

  it('are longer after lowering-heavy work', () => {
    fc.assert(
      fc.property(work, status, (sets, who) => {
        const [plain, heavy] = [false, true].map((loweringHeavy) =>
          likely({ ...sets, loweringHeavy }, who),
        );
        expect(heavy).toBeGreaterThan(plain ?? 0);
      }),
    );
  });

  it('are longer after work that is new than after the same work when familiar', () => {
    fc.assert(
      fc.property(work, status, days, (sets, who, more) => {
        const familiar = { ...sets, likeSessionsDaysAgo: [...sets.likeSessionsDaysAgo, ...more] };
        expect(likely(familiar, who)).toBeLessThanOrEqual(likely(sets, who));
      }),
    );
  });

  it('are shorter for the trained', () => {
    fc.assert(
      fc.property(work, (sets) => {
        expect(likely(sets, 'trained')).toBeLessThan(likely(sets, 'recreational'));
      }),
    );
  });

  it('come as earliest, likely and cautious in that order', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), status, (dose, who) => {
        const { earliest, likely: middle, cautious } = hoursUntilReady(dose, who);
        expect(earliest).toBeLessThan(middle);
        expect(middle).toBeLessThan(cautious);
      }),
    );
  });
});

describe('unaccustomedShare', () => {
  it('is 0.3 after a session today, and 0.3 to the half after one two months ago', () => {
    expect(unaccustomedShare([])).toBe(1);
    expect(unaccustomedShare([0])).toBe(0.3);
    expect(unaccustomedShare([60])).toBeCloseTo(Math.sqrt(0.3), 12);
    // 0.3 to the power of 1 + 0.5
    expect(unaccustomedShare([60, 0])).toBeCloseTo(0.3 * Math.sqrt(0.3), 12);
    expect(() => unaccustomedShare([-1])).toThrow('unaccustomedShare: days must be');
  });

  it('lies between 0 and 1, falls with every session and rises as it fades', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 0, max: 180 }), (ago, one) => {
        const share = unaccustomedShare(ago);
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(unaccustomedShare([...ago, one])).toBeLessThan(share);
        expect(unaccustomedShare(ago.map((day) => day + 1))).toBeGreaterThanOrEqual(share);
      }),
    );
  });

  it('makes the third such session cost less than the second, and that less than the first', () => {
    const bout = { exercise, sets: 5, loweringHeavy: true };
    const [first, second, third] = [[], [3], [3, 6]].map((likeSessionsDaysAgo) =>
      likely({ ...bout, likeSessionsDaysAgo }, 'recreational'),
    ) as [number, number, number];
    expect(second).toBeLessThan(first);
    expect(third).toBeLessThan(second);
  });
});
