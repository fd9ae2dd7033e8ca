import { type ReachableLoad, reachableLoads } from '@windlass/core/equipment';
import { kg, type Load } from '@windlass/core/load';
import { describe, expect, it } from 'vitest';
import { boathouse } from '../shared/boathouse.ts';
import { trialLoads } from './trialLoads.ts';

function loadsOf(
  equipment: Parameters<typeof reachableLoads>[0],
): readonly [ReachableLoad, ...ReachableLoad[]] {
  const gym = reachableLoads(equipment, { plates: boathouse.plates });
  if (gym.kind === 'none') throw new Error(gym.message);
  return gym.loads;
}

const bar = loadsOf({ kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } });
const rack = loadsOf({
  kind: 'fixed',
  form: 'dumbbell',
  id: 'rack',
  name: 'Rack',
  weights: boathouse.dumbbells,
});

describe('trialLoads', () => {
  it('reaches just over twice the heaviest load that was tried', () => {
    // 4 kg × 2.2 = 8.8; 10 kg × 2.2 = 22.
    expect(trialLoads(rack, []).loads.at(-1)?.load).toBe(kg(8));
    expect(trialLoads(rack, [kg(10), kg(6)]).loads.at(-1)?.load).toBe(kg(22));
  });

  it('leaves out loads of many pieces where there are very many loads', () => {
    const { loads, mostPieces } = trialLoads(bar, [kg(40)]);
    expect(bar.length).toBeGreaterThan(200);
    expect(loads.length).toBeLessThanOrEqual(16);
    expect(Math.max(...loads.map(({ loading }) => loading.pieces))).toBe(mostPieces);
  });

  it('keeps the lightest load, and the order', () => {
    const { loads } = trialLoads(bar, [kg(80)]);
    expect(loads[0].load).toBe(kg(20));
    const order = loads.map(({ load }): Load => load);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });
});
