import { describe, expect, it } from 'vitest';
import type { Stage } from '../extension/index.ts';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { ChainIntent, LiftIntent } from './Intent.ts';
import type { PlannedLift } from './LiftPlan.ts';
import { planSession } from './planSession.ts';
import { printSheet } from './printSheet.ts';
import { sessionSheet } from './sessionSheet.ts';

const [known] = pulldownSets as readonly [ClientSet];
const hold = { kind: 'hold', at: 'middle', maxSeconds: 20 } as const;
const lower = { kind: 'lower', secondsEach: 6, maxLowerings: 1 } as const;
const chain: ChainIntent = { stages: [hold, lower] };

function session(who: Client, ...lifts: readonly LiftIntent[]) {
  const plan = planSession({ client: who, gym, intent: intentOf(...lifts) });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan;
}

function planned(lift: LiftIntent, who: Client = client): PlannedLift {
  const [plan] = session(who, lift).lifts;
  if (plan?.kind !== 'planned') throw new Error(plan?.kind);
  return plan;
}

const kindsOf = (plan: PlannedLift): readonly Stage['kind'][] =>
  plan.chain?.stages.map(({ stage }) => stage.kind) ?? [];
const plain = session(client, pulldown);
const chained = session(client, { ...pulldown, chain });
const [onward] = chained.lifts;

describe('lift, hold and lower on a pulldown, alone', () => {
  if (onward?.kind !== 'planned') throw new Error('not planned');

  it('comes in the order of strength, with a band for each stage', () => {
    expect(kindsOf(onward)).toEqual(['lift', 'hold', 'lower']);
    for (const { secondsUnderLoad } of onward.chain?.stages ?? []) {
      expect(secondsUnderLoad.low).toBeLessThanOrEqual(secondsUnderLoad.likely);
      expect(secondsUnderLoad.likely).toBeLessThanOrEqual(secondsUnderLoad.high);
    }
    expect(onward.chain?.notes.join(' ')).toMatch(/No study counts holds or lowerings/);
    expect(onward.chain?.notFor.length).toBeGreaterThan(0);
  });

  it('belongs to the last set, with the load of the others', () => {
    expect(onward.sets).toHaveLength(2);
    const without = plain.lifts[0];
    expect(without?.kind === 'planned' && without.work.choice).toEqual(onward.work.choice);
    expect(onward.refused).toEqual([]);
  });

  it('takes time and recovery', () => {
    const added = onward.chain?.addedSeconds ?? 0;
    expect(added).toBeGreaterThan(0);
    expect(chained.minutes.total - plain.minutes.total).toBeCloseTo(added / 60, 9);
    // 1 for the failure, 0.25 for the hold, 0.5 for the lowering.
    expect(onward.chain?.dose.hardSets).toBe(1.75);
    expect(chained.next?.likely.hours).toBeGreaterThan(plain.next?.likely.hours ?? 0);
  });

  it('brings the caution for lowerings that are new, and tires what follows', () => {
    expect(chained.cautions.map(({ id }) => id)).toContain('first-lowering-heavy-work');
    expect(plain.cautions.map(({ id }) => id)).not.toContain('first-lowering-heavy-work');
    const after = (first: LiftIntent) => session(client, first, pulldown).lifts[1];
    const [fresh, tired] = [after(pulldown), after({ ...pulldown, chain })];
    if (fresh?.kind !== 'planned' || tired?.kind !== 'planned') throw new Error('not planned');
    expect(tired.sets[0]?.capacity).toBeLessThan(fresh.sets[0]?.capacity ?? 0);
  });

  it('says on the sheet what follows the rep that fails, and for whom it is not', () => {
    const text = printSheet(sessionSheet(chained)).replaceAll(/\s+/g, ' ');
    expect(text).toContain('the last set goes on past the rep that fails, with the same load');
    expect(text).toMatch(/hold in the middle position, 20 s at most; about \d+ \(/);
    expect(text).toMatch(/lower once, over 6 s/);
    expect(text).toMatch(/not for everybody\. It is not planned where: The person is under 18\./);
  });
});

describe('a chain that is refused comes back with its reasons, and the set stays an ordinary one', () => {
  const codes = (plan: PlannedLift) => plan.refused.map(({ what, code }) => `${what}: ${code}`);

  it('lowering before holding', () => {
    const plan = planned({ ...pulldown, chain: { stages: [lower, hold] } });
    expect(codes(plan)).toContain('chain: extension.wrong-order');
    expect(plan.chain).toBeUndefined();
    const without = plain.lifts[0];
    expect(without?.kind === 'planned' && without.sets).toEqual(plan.sets);
  });

  it('repeated lowerings that nothing brings back up, with the nearest that is allowed', () => {
    const plan = planned({ ...pulldown, chain: { stages: [hold, { ...lower, maxLowerings: 4 }] } });
    expect(codes(plan)).toEqual(['chain: extension.no-way-back']);
    expect(plan.refused[0]?.message).toContain('lower once');
    const helped = planned(
      { ...pulldown, chain: { stages: [hold, { ...lower, maxLowerings: 4 }] } },
      { ...client, alone: false },
    );
    expect(kindsOf(helped)).toEqual(['lift', 'hold', 'lower']);
  });

  it('help and lowerings on a bench press with a bar, alone and without pins', () => {
    const bench: LiftIntent = {
      ...pulldown,
      exercise: 'barbell-bench-press',
      equipment: 'short-bar',
    };
    const sets = [{ ...known, exercise: bench.exercise, equipment: bench.equipment }];
    const wanted: ChainIntent = { stages: [{ kind: 'assisted', reps: 2 }, lower] };
    const plan = planned({ ...bench, chain: wanted }, { ...client, sets });
    expect(codes(plan)).toContain('chain: extension.alone-under-load');
    expect(codes(plan)).toContain('chain: extension.no-partner');
    expect(plan.refused.map(({ message }) => message).join(' ')).toMatch(/dumbbells, a machine/);
    expect(plan.chain).toBeUndefined();
  });

  it('with treated blood pressure, whatever is switched on', () => {
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...client, health: { ...client.health, bloodPressure } };
    const plan = planned({ ...pulldown, chain: { ...chain, switchedOn: true } }, treated);
    expect(codes(plan)).toContain('chain: extension.no-chain');
    expect(plan.chain).toBeUndefined();
    expect(plan.repsInReserve).toBe(2);
    const text = printSheet(sessionSheet(session(treated, { ...pulldown, chain })));
    expect(text).not.toMatch(/hold your breath|past the rep that fails/);
  });

  it('more lowerings for a muscle than a first session may have, over all lifts', () => {
    const helped = { ...client, alone: false };
    const four: LiftIntent = { ...pulldown, chain: { stages: [{ ...lower, maxLowerings: 4 }] } };
    // Six are the most for a muscle: four, and no four more.
    const [first, second] = session(helped, four, four).lifts;
    if (first?.kind !== 'planned' || second?.kind !== 'planned') throw new Error('not planned');
    expect(kindsOf(first)).toEqual(['lift', 'lower']);
    expect(codes(second)).toEqual(['chain: extension.too-many-lowerings']);
  });

  it('while the load is still looked for', () => {
    const row = { ...pulldown, exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells', chain };
    const [plan] = session(client, row).lifts;
    if (plan?.kind !== 'finding') throw new Error(plan?.kind);
    expect(plan.refused).toMatchObject([{ code: 'session.chain-load-unknown' }]);
  });
});

describe('a time limit', () => {
  it('takes what goes on past failure before any set', () => {
    const intent = { ...intentOf({ ...pulldown, chain }), minutesAtMost: plain.minutes.total };
    const fitted = planSession({ client, gym, intent });
    if (fitted.kind !== 'session') throw new Error(fitted.kind);
    expect(fitted.limit?.dropped).toMatchObject([{ kind: 'chain', lift: 0 }]);
    expect(fitted.minutes.total).toBeCloseTo(plain.minutes.total, 9);
  });
});
