import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kappaAtTempo } from './kappaAtTempo.ts';
import { repsAtShare } from './repsAtShare.ts';
import { windowShares } from './windowShares.ts';

const kappa = fc.double({ min: 5, max: 150, noNaN: true });
const share = fc.double({ min: 0.3, max: 0.98, noNaN: true });
const paces = fc
  .tuple(fc.double({ min: 2, max: 8, noNaN: true }), fc.double({ min: 2, max: 8, noNaN: true }))
  .map(([a, b]) => (a < b ? { quick: a, slow: b } : { quick: b, slow: a }));
const reps = fc.integer({ min: 1, max: 30 });

const curve = (kappaRef: number, seconds: number) => ({
  kappa: kappaAtTempo(kappaRef, seconds).kappa.likely,
  alpha: 0.5,
});

/** Slack for the last digits of two powers that are mathematically ordered. */
const DIGITS = 1e-9;

describe('a slower pace, from 2 to 8 seconds a repetition', () => {
  it('never gives more repetitions and never a shorter set', () => {
    fc.assert(
      fc.property(kappa, share, paces, (kappaRef, load, { quick, slow }) => {
        const many = repsAtShare(load, curve(kappaRef, quick));
        const few = repsAtShare(load, curve(kappaRef, slow));
        expect(few).toBeLessThanOrEqual(many + DIGITS);
        expect(few * slow).toBeGreaterThanOrEqual(many * quick - DIGITS);
      }),
    );
  });

  it('never asks more load for the same window', () => {
    fc.assert(
      fc.property(kappa, reps, reps, paces, (kappaRef, a, b, { quick, slow }) => {
        const window = { minReps: Math.min(a, b), maxReps: Math.max(a, b) };
        const fast = windowShares(window, curve(kappaRef, quick));
        const calm = windowShares(window, curve(kappaRef, slow));
        expect(calm.lightest).toBeLessThanOrEqual(fast.lightest + DIGITS);
        expect(calm.middle).toBeLessThanOrEqual(fast.middle + DIGITS);
        expect(calm.heaviest).toBeLessThanOrEqual(fast.heaviest + DIGITS);
      }),
    );
  });

  it('always lies inside its own band', () => {
    fc.assert(
      fc.property(kappa, fc.double({ min: 0.2, max: 120, noNaN: true }), (kappaRef, seconds) => {
        const { low, likely, high } = kappaAtTempo(kappaRef, seconds).kappa;
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
      }),
    );
  });
});
