import fc from 'fast-check';
import { expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve, loadForWindow, priorFor, strengthFrom } from '../strength/index.ts';
import { casesTimes } from './cases.testing.ts';
import { nearChoices } from './nearChoices.ts';

/** Chances this close are the same: forecasts round cells of the belief together. */
const SAME_CHANCE = 0.002;

const set = fc.record({
  kilograms: fc.integer({ min: 20, max: 140 }),
  reps: fc.integer({ min: 1, max: 25 }),
  end: fc.constantFrom(
    { kind: 'failure' as const },
    { kind: 'reserve' as const, repsLeft: 2 },
    { kind: 'more' as const, atLeast: 1 },
  ),
});

it('leaves the answer for a window what it is among all loads', () => {
  fc.assert(
    fc.property(
      fc.array(set, { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 0, max: 6 }),
      fc.constantFrom(1.25, 2.5, 10),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      (sets, minReps, width, step, capacity) => {
        const belief = strengthFrom({
          sets: sets.map(({ kilograms, reps, end }) => ({
            load: kg(kilograms),
            reps,
            end,
            day: 0,
          })),
          prior: priorFor(generalCurve),
          today: 3,
        });
        if (belief.kind !== 'posterior') return;
        const choices = Array.from({ length: Math.floor(130 / step) }, (_, at) => ({
          load: kg(15 + at * step),
        }));
        const question = {
          posterior: belief,
          choices,
          window: { minReps, maxReps: minReps + width },
          secondsPerRep: 4,
          capacity,
        };
        const all = loadForWindow(question);
        const near = loadForWindow({ ...question, choices: nearChoices(question) });
        expect(near.kind).toBe(all.kind);
        if (all.kind === 'none-near' && near.kind === 'none-near') {
          expect(near.reason).toBe(all.reason);
          expect(near.lighter?.choice).toBe(all.lighter?.choice);
          expect(near.heavier?.choice).toBe(all.heavier?.choice);
        }
        if (all.kind !== 'found' || near.kind !== 'found') return;
        expect(near.best.inside).toBeGreaterThan(all.best.inside - SAME_CHANCE);
        const at = choices.indexOf(near.best.choice);
        expect(near.lighter?.choice).toBe(choices[at - 1]);
        expect(near.heavier?.choice).toBe(choices[at + 1]);
        expect(near.careful?.choice.load ?? 0).toBeLessThanOrEqual(all.careful?.choice.load ?? 0);
        if (all.careful && near.careful) {
          expect(all.careful.before - near.careful.before).toBeLessThan(SAME_CHANCE);
        }
      },
    ),
    casesTimes(0.25),
  );
});
