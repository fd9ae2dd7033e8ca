import { changeLoading, type PlateLoading, reachableLoads } from '@windlass/core/equipment';
import { describe, expect, it } from 'vitest';
import { changeWords, newPerSide } from './changeWords.ts';

const loaded = (...kilograms: readonly number[]): PlateLoading => {
  const plates = kilograms.map((value) => ({ weight: { value, unit: 'kg' as const } }));
  const stacks = [
    { place: 'left', plates },
    { place: 'right', plates },
  ] as const;
  return { kind: 'plates', stacks, pieces: 2 * plates.length };
};

describe('changeWords', () => {
  it('says once what is done on both sides', () => {
    const change = changeLoading(loaded(20, 5), loaded(20, 10, 1.25));
    expect(changeWords(change)).toBe(
      'take off 5\u00a0kg, put on 10\u00a0kg, put on 1.25\u00a0kg, each side',
    );
    expect(newPerSide(change)).toBe(2);
  });

  it('says when there is nothing to do', () => {
    expect(changeWords(changeLoading(loaded(20), loaded(20)))).toBe('nothing to change');
  });

  it('says a pair of dumbbells once', () => {
    const weights = [10, 14].map((value) => ({
      weight: { value, unit: 'kg' as const },
      pieces: 2,
    }));
    const rack = { kind: 'fixed', form: 'dumbbell', id: 'rack', name: 'Rack', weights } as const;
    const loads = reachableLoads(rack);
    if (loads.kind === 'none') throw new Error(loads.message);
    const [light, heavy] = loads.loads;
    const change = changeLoading(light.loading, heavy?.loading ?? 'nothing');
    expect(changeWords(change)).toBe('put back 10\u00a0kg, take 14\u00a0kg');
  });
});
