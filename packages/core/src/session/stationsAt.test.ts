import { describe, expect, it } from 'vitest';
import type { Station } from '../anatomy/index.ts';
import { gym } from './boathouse.testing.ts';
import type { PlanGym } from './PlanGym.ts';
import { stationsAt } from './stationsAt.ts';

/** The stack has a name that is none of a station's. */
const plain: PlanGym = {
  ...gym,
  equipment: gym.equipment.map((item) => (item.kind === 'stack' ? { ...item, id: 'tower' } : item)),
};
const at = (change: Partial<PlanGym>, ...known: Parameters<typeof stationsAt>[1]) =>
  stationsAt({ ...plain, ...change }, known);
const needs = (...stations: readonly Station[]) => ({ stations });

describe('stationsAt', () => {
  it('has what the gym names, for everything or beside one piece of equipment', () => {
    const { all, hasAt } = at({
      stations: [{ station: 'flat-bench' }, { station: 'high-pulley', equipment: 'tower' }],
    });
    expect([...all].sort()).toEqual(['flat-bench', 'high-pulley']);
    expect(hasAt('dumbbells', needs('flat-bench'))).toBe(true);
    expect(hasAt('tower', needs('flat-bench', 'high-pulley'))).toBe(true);
    expect(hasAt('dumbbells', needs('high-pulley'))).toBe(false);
    expect(hasAt('dumbbells', needs())).toBe(true);
  });

  it('shares what stands beside bars and dumbbells, and keeps what belongs to other places', () => {
    const bench = (equipment: string) => at({ stations: [{ station: 'flat-bench', equipment }] });
    expect(bench('short-bar').hasAt('dumbbells', needs('flat-bench'))).toBe(true);
    expect(bench('tower').hasAt('dumbbells', needs('flat-bench'))).toBe(false);
    expect(bench('station').hasAt('dumbbells', needs('flat-bench'))).toBe(false);
    expect(bench('not-here').hasAt('dumbbells', needs('flat-bench'))).toBe(false);
    expect(bench('not-here').hasAt('not-here', needs('flat-bench'))).toBe(true);
  });

  it('has what an exercise needs that is known to be done there', () => {
    const { hasAt, all } = at(
      {},
      { exercise: 'cable-pulldown', equipment: 'tower' },
      { exercise: 'barbell-bench-press', equipment: 'short-bar' },
      { exercise: 'my-own', equipment: 'short-bar' },
    );
    expect(hasAt('tower', needs('high-pulley'))).toBe(true);
    expect(hasAt('station', needs('high-pulley'))).toBe(false);
    expect(hasAt('dumbbells', needs('flat-bench'))).toBe(true);
    expect(all).toContain('high-pulley');
  });

  it('takes equipment with the name of a station for it', () => {
    const named = (id: string) =>
      at({
        equipment: gym.equipment.map((item) => (item.kind === 'stack' ? { ...item, id } : item)),
      });
    expect(named('leg-press').hasAt('leg-press', needs('leg-press-machine'))).toBe(true);
    expect(named('high-pulley').hasAt('high-pulley', needs('high-pulley'))).toBe(true);
    expect(named('leg-press').all).toEqual(['leg-press-machine']);
    expect(named('pulldown').all).toEqual(['pulldown-machine']);
    expect(at({}).all).toEqual([]);
  });
});
