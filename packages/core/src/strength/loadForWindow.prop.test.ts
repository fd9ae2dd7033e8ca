import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { loadForWindow } from './loadForWindow.ts';
import { priorFor } from './priorFor.ts';
import { strengthFrom } from './strengthFrom.ts';

const asked = fc.record({
  load: fc.integer({ min: 8, max: 60 }).map((steps) => 2.5 * steps),
  reps: fc.integer({ min: 1, max: 25 }),
  shortest: fc.integer({ min: 1, max: 20 }),
  longer: fc.integer({ min: 0, max: 6 }),
  secondsPerRep: fc.double({ min: 2, max: 8, noNaN: true }),
  capacity: fc.double({ min: 0.6, max: 1, noNaN: true }),
});

type Asked = typeof asked extends fc.Arbitrary<infer T> ? T : never;

function ask({ load, reps, shortest, longer, secondsPerRep, capacity }: Asked) {
  const posterior = strengthFrom({
    sets: [{ load: kg(load), reps, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
    prior: priorFor(generalCurve),
    today: 1,
    cells: { columns: 48, rows: 16 },
  });
  if (posterior.kind !== 'posterior') throw new Error(posterior.kind);
  return loadForWindow({
    posterior,
    choices: [0.5, 0.7, 0.85, 1, 1.1, 1.25].map((share) => ({
      load: kg(Math.round(load * share)),
    })),
    window: { minReps: shortest, maxReps: shortest + longer },
    secondsPerRep,
    capacity,
  });
}

describe('loadForWindow', () => {
  it('splits the chances into before, inside and beyond, and moves them with the load', () => {
    fc.assert(
      fc.property(asked, (question) => {
        const answer = ask(question);
        if (answer.kind === 'no-loads') throw new Error('loads were given');
        for (const { before, inside, beyond } of answer.all) {
          expect(before + inside + beyond).toBeCloseTo(1, 9);
        }
        answer.all.slice(1).forEach((one, index) => {
          const lighter = answer.all[index];
          // 0.001: cells with nearly the same mean are put together
          expect(one.before).toBeGreaterThanOrEqual((lighter?.before ?? 0) - 0.001);
          expect(one.beyond).toBeLessThanOrEqual((lighter?.beyond ?? 1) + 0.001);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('finds the best of all, or names why none is near', () => {
    fc.assert(
      fc.property(asked, (question) => {
        const answer = ask(question);
        if (answer.kind === 'no-loads') throw new Error('loads were given');
        const { shortest, longer } = question;
        const near = answer.all.filter(
          ({ reps }) => reps.likely >= shortest && reps.likely <= shortest + longer,
        );
        expect(answer.kind).toBe(near.length > 0 ? 'found' : 'none-near');
        if (answer.kind === 'found') {
          const most = Math.max(...answer.all.map(({ inside }) => inside));
          expect(answer.best.inside).toBeCloseTo(most, 8);
          if (answer.lighter)
            expect(answer.lighter.choice.load).toBeLessThan(answer.best.choice.load);
        } else {
          expect(answer.lighter ?? answer.heavier).toBeDefined();
        }
        expect(answer.asked.low).toBeLessThanOrEqual(answer.asked.high);
        expect(toKg(answer.all[0]?.choice.load ?? kg(0))).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });
});
