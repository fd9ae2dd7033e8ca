import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { benchPress, chinUp, deadHang, pulldown } from './exercises.testing.ts';
import { planChain } from './planChain.ts';
import type { ChainSetting, Stage } from './Stage.ts';

const stage: fc.Arbitrary<Stage> = fc.oneof(
  fc.constant<Stage>({ kind: 'lift' }),
  fc.record({ kind: fc.constant('part-range' as const), maxReps: fc.integer({ min: 0, max: 14 }) }),
  fc.record({
    kind: fc.constant('lighter' as const),
    loadShare: fc.double({ min: 0.2, max: 1.1, noNaN: true }),
  }),
  fc.record({ kind: fc.constant('pause' as const), seconds: fc.integer({ min: 0, max: 90 }) }),
  fc.record({ kind: fc.constant('assisted' as const), reps: fc.integer({ min: 0, max: 4 }) }),
  fc.record({
    kind: fc.constant('hold' as const),
    at: fc.constantFrom('stretched' as const, 'middle' as const, 'contracted' as const),
    maxSeconds: fc.integer({ min: 0, max: 120 }),
  }),
  fc.record({
    kind: fc.constant('lower' as const),
    secondsEach: fc.integer({ min: 1, max: 20 }),
    maxLowerings: fc.integer({ min: 0, max: 14 }),
  }),
);

const setting: fc.Arbitrary<ChainSetting> = fc.record({
  exercise: fc.constantFrom(chinUp, pulldown, benchPress, deadHang),
  partner: fc.boolean(),
  stops: fc.boolean(),
  switchedOn: fc.boolean(),
  limits: fc.constantFrom(
    limitsFor({}),
    limitsFor({ ageYears: 14 }),
    limitsFor({ ageYears: 70 }),
    limitsFor({ bloodPressure: { status: 'untreated' } }),
    limitsFor({}, { loweringHeavy: true, alone: true }),
  ),
});

it('the nearest chain is itself allowed, and keeps no stage that was not asked but the lift', () => {
  fc.assert(
    fc.property(fc.array(stage, { maxLength: 6 }), setting, (asked, where) => {
      const plan = planChain(asked, where);
      if (plan.kind === 'allowed') return;
      expect(plan.refusals.length).toBeGreaterThan(0);
      if (plan.nearest.kind !== 'chain') return;
      expect(planChain(plan.nearest.stages, where).kind).toBe('allowed');
      const left = asked.map(({ kind }) => kind);
      for (const { kind } of plan.nearest.stages.slice(1)) {
        expect(left).toContain(kind);
        left.splice(left.indexOf(kind), 1);
      }
    }),
    { numRuns: 300 },
  );
});

it('what the limits refuse stays refused whoever switches on or helps', () => {
  fc.assert(
    fc.property(fc.array(stage, { minLength: 2, maxLength: 5 }), setting, (asked, where) => {
      const limits = limitsFor({ ageYears: 14 });
      expect(planChain(asked, { ...where, limits, partner: true, stops: true }).kind).toBe(
        'refused',
      );
    }),
  );
});

it('alone under a bar without stops nothing goes to failure', () => {
  fc.assert(
    fc.property(fc.array(stage, { maxLength: 5 }), setting, (asked, where) => {
      const alone = { ...where, exercise: benchPress, partner: false, stops: false };
      const plan = planChain(asked, alone);
      expect(plan.kind === 'refused' && plan.nearest.kind).not.toBe('chain');
      expect(plan.kind).toBe('refused');
    }),
  );
});
