import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import type { PairInput } from './Pair.ts';
import { planPair } from './planPair.ts';

const pair = fc
  .record({
    targetShare: fc.double({ min: 0.3, max: 0.7, noNaN: true }),
    reps: fc.integer({ min: 5, max: 15 }),
    usualReps: fc.integer({ min: 5, max: 15 }),
    secondsPerRep: fc.double({ min: 2, max: 10, noNaN: true }),
    transitionSeconds: fc.double({ min: 0, max: 300, noNaN: true }),
    tired: fc.double({ min: 0, max: 0.1, noNaN: true }),
  })
  .map(
    ({ targetShare, reps, usualReps, secondsPerRep, transitionSeconds, tired }): PairInput => ({
      target: ['vasti'],
      isolation: {
        exercise: {
          id: 'extension',
          name: 'Extension',
          direct: { vasti: 1 },
          indirect: {},
          span: 'isolation',
          endurance: 'leg-isolation',
        },
        reps,
        repsLeft: 0,
        secondsPerRep,
      },
      compound: {
        exercise: {
          id: 'press',
          name: 'Press',
          direct: { vasti: targetShare },
          indirect: { glutes: 1 - targetShare },
          span: 'compound',
          endurance: 'leg-press',
        },
        usual: { load: kg(120), reps: usualReps },
        secondsPerRep,
      },
      transitionSeconds,
      start: { glutes: { fast: tired, slow: 0 } },
    }),
  );

function share(input: PairInput) {
  const plan = planPair(input);
  if (plan.kind === 'refused') throw new Error(plan.refusals[0]?.why);
  return plan;
}

const slack = 1e-9;

it('the second lift is lighter and shorter, in every part of the band', () => {
  fc.assert(
    fc.property(pair, (input) => {
      const { loadShare, repsAtUsualLoad, loadKg } = share(input);
      expect(loadShare.low).toBeLessThanOrEqual(loadShare.likely + slack);
      expect(loadShare.likely).toBeLessThanOrEqual(loadShare.high + slack);
      expect(loadShare.high).toBeLessThan(1);
      expect(loadKg.likely).toBeCloseTo(120 * loadShare.likely, 9);
      expect(repsAtUsualLoad.low).toBeLessThanOrEqual(repsAtUsualLoad.likely);
      expect(repsAtUsualLoad.high).toBeLessThanOrEqual(input.compound.usual.reps);
    }),
  );
});

it('a longer way between never asks for a lighter load', () => {
  fc.assert(
    fc.property(pair, fc.double({ min: 0, max: 300, noNaN: true }), (input, more) => {
      const longer = { ...input, transitionSeconds: input.transitionSeconds + more };
      expect(share(longer).loadShare.likely).toBeGreaterThanOrEqual(
        share(input).loadShare.likely - slack,
      );
    }),
  );
});

it('stopping the isolation set earlier never asks for a lighter load', () => {
  fc.assert(
    fc.property(pair, fc.integer({ min: 1, max: 4 }), (input, earlier) => {
      const { reps, repsLeft } = input.isolation;
      const isolation = { ...input.isolation, reps: reps - earlier, repsLeft: repsLeft + earlier };
      expect(share({ ...input, isolation }).loadShare.likely).toBeGreaterThanOrEqual(
        share(input).loadShare.likely - slack,
      );
    }),
  );
});
