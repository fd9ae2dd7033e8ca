import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { LiftIntent } from './Intent.ts';
import { planSession } from './planSession.ts';

function planned(...lifts: readonly LiftIntent[]) {
  const plan = planSession({ client, gym, intent: intentOf(...lifts) });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan.lifts.map((lift) => {
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    return lift;
  });
}

describe('a planned lift', () => {
  it('has its neighbours, and for what it was chosen', () => {
    const [lift] = planned(pulldown);
    expect(lift?.lighter?.choice.load).toBeLessThan(lift?.work.choice.load ?? 0);
    expect(lift?.heavier?.choice.load).toBeGreaterThan(lift?.work.choice.load ?? 0);
    expect(lift).not.toHaveProperty('chosenFor');
    const { window, tempo, sets, restSeconds } = pulldown;
    const muscles = { muscles: ['lats'] as const, window, tempo, sets, restSeconds };
    const stations = [{ station: 'high-pulley', equipment: 'pulldown' }] as const;
    const intent = { ...intentOf(), muscles };
    const plan = planSession({ client, gym: { ...gym, stations }, intent });
    const [chosen] = plan.kind === 'session' ? plan.lifts : [];
    expect(chosen).toMatchObject({ kind: 'planned', chosenFor: { muscles: ['lats'] } });
  });
});

describe('straight sets', () => {
  it('begin as tired as the lifts before leave the muscles', () => {
    const [first, second] = planned(pulldown, pulldown);
    // the chance for which a load was chosen is the chance of the first set with it
    expect(first?.sets[0]?.chance).toBeCloseTo(first?.work.inside ?? 0, 9);
    expect(second?.sets[0]?.chance).toBeCloseTo(second?.work.inside ?? 0, 9);
    expect(second?.sets[0]?.capacity).toBeLessThan(1);
  });

  it('go past failure in the last one only, which tires none before it', () => {
    const three = { ...pulldown, sets: 3 };
    const chain = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 }] } as const;
    const [plain] = planned(three);
    const [chained] = planned({ ...three, chain });
    expect(chained?.chain?.stages).toHaveLength(2);
    expect(chained?.sets).toEqual(plain?.sets);
  });
});
