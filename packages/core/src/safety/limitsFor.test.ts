import { describe, expect, it } from 'vitest';
import type { ClientHealth } from './ClientHealth.ts';
import { limitsFor } from './limitsFor.ts';

const treated: ClientHealth = {
  bloodPressure: { status: 'treated', doctorAgrees: true, medicines: ['diuretic', 'beta-blocker'] },
};

describe('limitsFor', () => {
  it('allows everything that no rule limits', () => {
    const limits = limitsFor({});
    expect(limits.training.kind).toBe('allowed');
    expect(limits.failureChains.kind).toBe('allowed');
    expect(limits.intensityCap).toBeUndefined();
    expect(limits.repsInReserve).toEqual({ atLeast: 0, firm: false, reasons: [] });
  });

  // Treated hypertension: no max test, no holds, no chains, at most 80 %, 10 to 15 repetitions.
  describe('treated blood pressure', () => {
    it('switches maximal singles, holds and chains off', () => {
      const limits = limitsFor(treated);
      expect(limits.maximalSingles.kind).toBe('refused');
      expect(limits.longHolds.kind).toBe('refused');
      expect(limits.failureChains.kind).toBe('refused');
      expect(limits.training.kind).toBe('allowed');
    });

    it('caps loads at 80 % for 10 to 15 repetitions, and uses no heart rate', () => {
      const limits = limitsFor(treated);
      const reasons = [{ from: 'blood-pressure-treated' }];
      expect(limits.intensityCap).toMatchObject({ share: 0.8, reasons });
      expect(limits.repWindow).toMatchObject({ low: 10, high: 15, reasons });
      expect(limits.heartRateTargets).toMatchObject({
        kind: 'refused',
        reasons: [{ from: 'beta-blocker' }],
      });
    });

    it('gives way to the doctor’s own limits, in both directions', () => {
      const clinician = { by: 'physician', intensityCap: 0.6, longHolds: 'allowed' } as const;
      const own = limitsFor({ ...treated, clinician });
      expect(own.intensityCap).toMatchObject({ share: 0.6, reasons: [{ from: 'clinician' }] });
      expect(own.longHolds.kind).toBe('allowed');
      expect(own.failureChains.kind).toBe('refused');
      const higher = limitsFor({ ...treated, clinician: { by: 'physician', intensityCap: 0.9 } });
      expect(higher.intensityCap?.share).toBe(0.9);
    });

    it('lets a doctor who allows chains free the end of the set with them', () => {
      const own = limitsFor({
        ...treated,
        clinician: { by: 'physician', failureChains: 'allowed' },
      });
      expect(own.failureChains.kind).toBe('allowed');
      expect(own.repsInReserve.atLeast).toBe(0);
    });
  });

  it('takes the clinician’s repetitions in reserve as they are: firm above 0, nothing at 0', () => {
    const left = (repsInReserve: number) =>
      limitsFor({ ...treated, clinician: { by: 'physician', repsInReserve } }).repsInReserve;
    expect(left(1)).toMatchObject({ atLeast: 1, firm: true, reasons: [{ from: 'clinician' }] });
    expect(left(0)).toMatchObject({ atLeast: 0, firm: false, reasons: [{ from: 'clinician' }] });
  });

  it('names every rule beside a refusal by the clinician, and beside one that waits', () => {
    const from = (client: ClientHealth) => {
      const chains = limitsFor(client).failureChains;
      return chains.kind === 'allowed' ? [] : [chains.kind, ...chains.reasons.map((r) => r.from)];
    };
    const clinician = { by: 'physician', failureChains: 'refused' } as const;
    expect(from({ ageYears: 16 })).toEqual(['refused', 'under-18']);
    expect(from({ ageYears: 16, clinician })).toEqual(['refused', 'clinician', 'under-18']);
    expect(from({ ageYears: 70 })).toEqual(['off-by-default', 'over-65']);
    expect(from({ ageYears: 70, activity: 'inactive' })).toEqual([
      'off-by-default',
      'little-activity',
      'over-65',
    ]);
  });

  it('caps at the lower of two shares: 69 % with a known disease, 80 % with raised pressure', () => {
    const limits = limitsFor({ ...treated, conditions: ['kidney'], activity: 'active' });
    expect(limits.intensityCap).toMatchObject({
      share: 0.69,
      reasons: [{ from: 'known-disease-active' }],
    });
  });

  it('stops training at a very high reading, whoever agreed', () => {
    const limits = limitsFor({
      bloodPressure: {
        status: 'treated',
        doctorAgrees: true,
        reading: { systolic: 185, diastolic: 95 },
      },
      clinician: { by: 'physician', agreesToTraining: true },
    });
    expect(limits.training.kind).toBe('refused');
  });

  it('takes the strictest of several rules, with its reason', () => {
    const limits = limitsFor({ ...treated, ageYears: 16 });
    expect(limits.repsInReserve).toMatchObject({
      atLeast: 3,
      firm: true,
      reasons: [{ from: 'under-18' }],
    });
  });

  it('offers a child no max test, estimate, chain or forced repetition, with or without a doctor', () => {
    const clinician = {
      by: 'physician',
      maximalSingles: 'allowed',
      failureChains: 'allowed',
    } as const;
    for (const client of [{ ageYears: 12 }, { ageYears: 12, clinician }]) {
      const limits = limitsFor(client);
      expect(limits.maximalSingles.kind).toBe('refused');
      expect(limits.estimatedMaxima.kind).toBe('refused');
      expect(limits.failureChains.kind).toBe('refused');
      expect(limits.forcedReps.kind).toBe('refused');
      expect(limits.unsupervised.kind).toBe('refused');
      expect(limits.repsInReserve.atLeast).toBe(3);
    }
  });

  it('puts no cap on loads for age over 65; chains and singles wait to be asked for', () => {
    const limits = limitsFor({ ageYears: 70 });
    expect(limits.intensityCap).toBeUndefined();
    expect(limits.repWindow).toBeUndefined();
    expect(limits.failureChains.kind).toBe('off-by-default');
    expect(limits.maximalSingles.kind).toBe('off-by-default');
    expect(limits.repsInReserve).toMatchObject({ atLeast: 1, firm: false });
    expect(limitsFor({ ageYears: 65 }).failureChains.kind).toBe('allowed');
    expect(limitsFor({ ageYears: 18 }).failureChains.kind).toBe('allowed');
    expect(limitsFor({ ageYears: 17 }).failureChains.kind).toBe('refused');
  });

  it('keeps a first session of hard lowerings to six for a muscle', () => {
    expect(limitsFor({}, { loweringHeavy: true }).hardLowerings).toMatchObject({
      count: 6,
      reasons: [{ from: 'first-lowering-heavy-work' }],
    });
    const used = { loweringHeavyWork: 'accustomed' } as const;
    expect(limitsFor(used, { loweringHeavy: true }).hardLowerings).toBeUndefined();
  });

  it('refuses forced repetitions to somebody alone', () => {
    expect(limitsFor({}, { alone: true }).forcedReps.kind).toBe('refused');
  });

  it('lays nobody who is pregnant on the back', () => {
    expect(limitsFor({ pregnancy: 'pregnant' }).supports).toMatchObject([{ support: 'lying' }]);
  });

  it('keeps the clinician’s list until its last day, and always when there is no date', () => {
    const clinician = {
      by: 'physiotherapist',
      notAllowed: ['squat'],
      handsOutOfUse: ['right'],
      until: '2026-06-30',
    } as const;
    expect(limitsFor({ clinician }, { date: '2026-06-30' }).notAllowed).toEqual(['squat']);
    expect(limitsFor({ clinician }).handsOutOfUse).toEqual(['right']);
    const after = limitsFor({ clinician }, { date: '2026-07-01' });
    expect(after.notAllowed).toEqual([]);
    expect(after.handsOutOfUse).toEqual([]);
    const undated = { by: 'physician', notAllowed: ['squat'], handsOutOfUse: ['left'] } as const;
    expect(limitsFor({ clinician: undated }, { date: '2026-07-01' })).toMatchObject({
      notAllowed: ['squat'],
      handsOutOfUse: ['left'],
    });
    expect(limitsFor({})).toMatchObject({ notAllowed: [], handsOutOfUse: [] });
  });

  it('pauses a joint with a grave sign, and everything for fever or a lost bladder', () => {
    const flagged = limitsFor({
      complaints: [{ kind: 'elbow-back-or-inner', redFlags: ['numbness-or-tingling'] }],
    });
    expect(flagged.joints).toMatchObject([{ joint: 'elbow' }]);
    expect(flagged.training.kind).toBe('allowed');
    const emergency = limitsFor({
      complaints: [{ kind: 'low-back', redFlags: ['bladder-or-bowel-change'] }],
    });
    expect(emergency.training).toMatchObject({
      kind: 'refused',
      reasons: [{ from: 'bladder-or-bowel-change' }],
    });
    expect(emergency.joints).toEqual([]);
  });

  it('pauses only the joint that the sign was told with, until a clinician agrees', () => {
    const complaints = [
      { kind: 'elbow-outer', redFlags: ['weakness'] },
      { kind: 'wrist', redFlags: [] },
    ] as const;
    expect(limitsFor({ complaints }).joints).toMatchObject([
      { joint: 'elbow', reason: { from: 'new-weakness' } },
    ]);
    const clinician = { by: 'physiotherapist', agreesToTraining: true } as const;
    expect(limitsFor({ complaints, clinician }).joints).toEqual([]);
  });

  it('loads a knee tendon only with a clinician in charge, under that clinician’s pain limit', () => {
    const complaints = [{ kind: 'knee-tendon-front' }] as const;
    expect(limitsFor({ complaints }).joints).toMatchObject([{ joint: 'knee' }]);
    const clinician = { by: 'physiotherapist', agreesToTraining: true, painLimit: 3 } as const;
    const led = limitsFor({ complaints, clinician });
    expect(led.joints).toEqual([]);
    expect(led.painLimit).toBe(3);
  });

  it('lists a position once, the stricter level first', () => {
    const limits = limitsFor({
      complaints: [{ kind: 'shoulder-slips-or-unstable' }, { kind: 'shoulder-raising-the-arm' }],
    });
    const of = (position: string) =>
      limits.positions.filter((limit) => limit.position === position);
    // The unstable shoulder names it first; raising the arm avoids it too.
    expect(of('shoulder-high-five')).toMatchObject([
      { level: 'avoid', reason: { from: 'shoulder-slips-or-unstable' } },
    ]);
    expect(of('shoulder-overhead')).toMatchObject([{ level: 'ease' }]);
    expect(limits.positions.map(({ level }) => level)).toEqual(
      limits.positions.map(({ level }) => level).toSorted(),
    );
  });
});
