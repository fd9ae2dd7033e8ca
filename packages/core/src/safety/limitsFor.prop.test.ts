import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClientHealth, TrainingContext } from './ClientHealth.ts';
import { cautionsFor } from './cautionsFor.ts';
import type { Limits, Permission } from './Limits.ts';
import { limitsFor } from './limitsFor.ts';
import { complaintRules } from './rules/complaintRules.ts';
import { redFlagRules } from './rules/redFlagRules.ts';

const word = fc.constantFrom('allowed' as const, 'refused' as const);
const clinician = fc.record(
  {
    by: fc.constantFrom('physician' as const, 'physiotherapist' as const),
    agreesToTraining: fc.boolean(),
    failureChains: word,
    longHolds: word,
    maximalSingles: word,
    intensityCap: fc.double({ min: 0.3, max: 1, noNaN: true }),
    repsInReserve: fc.nat(5),
  },
  { requiredKeys: ['by'] },
);
const complaint = fc.record({
  kind: fc.constantFrom(...complaintRules.map((rule) => rule.complaint)),
  redFlags: fc.subarray(redFlagRules.map((rule) => rule.flag)),
});
const client: fc.Arbitrary<ClientHealth> = fc.record(
  {
    ageYears: fc.integer({ min: 6, max: 95 }),
    symptoms: fc.subarray(['palpitations', 'ankle-swelling'] as const),
    conditions: fc.subarray(['metabolic', 'kidney'] as const),
    activity: fc.constantFrom('active' as const, 'inactive' as const),
    bloodPressure: fc.record({
      status: fc.constantFrom(
        'not-raised' as const,
        'treated' as const,
        'untreated' as const,
        'unknown' as const,
      ),
    }),
    pregnancy: fc.constantFrom('no' as const, 'pregnant' as const),
    complaints: fc.array(complaint, { maxLength: 3 }),
    clinician,
  },
  { requiredKeys: [] },
);
const context: fc.Arbitrary<TrainingContext> = fc.record(
  { alone: fc.boolean(), loweringHeavy: fc.boolean() },
  { requiredKeys: [] },
);

const ITEMS = ['training', 'maximalSingles', 'failureChains', 'longHolds', 'forcedReps'] as const;
const RANK: Record<Permission['kind'], number> = { allowed: 0, 'off-by-default': 1, refused: 2 };
const stricterOrEqual = (a: Limits, b: Limits) =>
  ITEMS.every((item) => RANK[a[item].kind] >= RANK[b[item].kind]) &&
  a.repsInReserve.atLeast >= b.repsInReserve.atLeast &&
  (a.intensityCap?.share ?? 1) <= (b.intensityCap?.share ?? 1);

describe('laws of limits', () => {
  it('a sign, a complaint or less age than 18 never loosens anything', () => {
    fc.assert(
      fc.property(client, context, complaint, (person, plan, more) => {
        const before = limitsFor(person, plan);
        const complaints = [...(person.complaints ?? []), more];
        expect(stricterOrEqual(limitsFor({ ...person, complaints }, plan), before)).toBe(true);
        fc.pre((person.ageYears ?? 40) <= 65);
        expect(stricterOrEqual(limitsFor({ ...person, ageYears: 17 }, plan), before)).toBe(true);
      }),
    );
  });

  it('a clinician’s refusal always holds', () => {
    fc.assert(
      fc.property(client, context, clinician, (person, plan, own) => {
        const limits = limitsFor({ ...person, clinician: own }, plan);
        for (const item of ['failureChains', 'longHolds', 'maximalSingles'] as const) {
          if (own[item] === 'refused') expect(limits[item].kind).toBe('refused');
        }
        if (own.intensityCap !== undefined) {
          expect(limits.intensityCap?.share).toBeLessThanOrEqual(own.intensityCap);
        }
      }),
    );
  });

  it('no training before somebody agreed comes with a caution of level stop, and reasons', () => {
    fc.assert(
      fc.property(client, context, (person, plan) => {
        const { training } = limitsFor(person, plan);
        if (training.kind === 'allowed') return;
        expect(training.reasons.length).toBeGreaterThan(0);
        expect(cautionsFor(person, plan)[0]?.level).toBe('stop');
      }),
    );
  });
});
