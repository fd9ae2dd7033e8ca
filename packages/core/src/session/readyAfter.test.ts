import { describe, expect, it } from 'vitest';
import { findExercise } from '../anatomy/index.ts';
import { client } from './boathouse.testing.ts';
import type { LiftWork } from './readyAfter.ts';
import { readyAfter } from './readyAfter.ts';

const found = findExercise('leg-extension');
if (found.kind !== 'found') throw new Error('the library has a leg extension');
const { exercise } = found;
const nothingKnown = { ...client, sets: [] };

function likely(...work: readonly Omit<LiftWork, 'exercise'>[]) {
  const ready = readyAfter(
    work.map((one) => ({ ...one, exercise })),
    nothingKnown,
    '2027-03-17',
  );
  if (!ready) throw new Error('no work');
  return ready.likely;
}

describe('readyAfter', () => {
  it('adds the sets of an exercise up to hours, and the first day at whose time they have passed', () => {
    // e^2.9 · 2^0.79 = 31.4 h for two hard sets: the second day after.
    expect(likely({ sets: 1 }, { sets: 1 }).hours).toBeCloseTo(Math.exp(2.9) * 2 ** 0.79, 6);
    expect(likely({ sets: 2 })).toEqual(likely({ sets: 1 }, { sets: 1 }));
    expect(likely({ sets: 2 }).date).toBe('2027-03-19');
  });

  it('takes longer for stages past failure, and less for repetitions that were left', () => {
    const { hours } = likely({ sets: 1 });
    expect(likely({ sets: 1, stagesPastFailure: 2 }).hours).toBeGreaterThan(hours);
    expect(likely({ sets: 1, repsInReserve: 3 }).hours).toBeLessThan(hours);
  });

  it('is nothing where nothing was done', () => {
    expect(readyAfter([], client, '2027-03-17')).toBeUndefined();
  });

  it('says earliest, likely and cautious, by the last muscle to be ready', () => {
    const ready = readyAfter([{ exercise, sets: 2 }], nothingKnown, '2027-03-17');
    if (!ready) throw new Error('no work');
    const { earliest, likely: middle, cautious, muscles } = ready;
    expect(earliest.hours).toBeLessThan(middle.hours);
    expect(middle.hours).toBeLessThan(cautious.hours);
    for (const time of ['earliest', 'likely', 'cautious'] as const) {
      const hours = muscles.map(({ readyIn }) => readyIn[time]);
      expect(ready[time].hours).toBe(Math.max(...hours));
      const days = Math.ceil(ready[time].hours / 24);
      expect(ready[time].date).toBe(`2027-03-${17 + days}`);
    }
    expect(muscles.map(({ muscle }) => muscle).sort()).toEqual(['rectus-femoris', 'vasti']);
  });

  it('goes by experience and reports', () => {
    const hours = (change: object) =>
      readyAfter([{ exercise, sets: 2 }], { ...nothingKnown, ...change }, '2027-03-17')?.likely
        .hours;
    const [fresh, some, experienced] = (['new', 'some', 'experienced'] as const).map((experience) =>
      hours({ experience }),
    );
    expect(fresh).toBeGreaterThan(some ?? 0);
    expect(some).toBeGreaterThan(experienced ?? 0);
    // a tenth longer for a short night
    expect(hours({ reports: { shortNights: 1 } })).toBeCloseTo(1.1 * (some ?? 0), 6);
  });
});
