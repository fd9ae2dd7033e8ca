import { describe, expect, it } from 'vitest';
import { kg, type LoadValue } from '../load/index.ts';
import type { FixedWeights, PieceStock } from './Equipment.ts';
import { kgPlates } from './oracle/exampleGear.ts';
import { rigFor } from './rigFor.ts';
import { solveRig } from './solveRig.ts';

const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });
const named = { id: 'it', name: 'It' };

function rack(weights: readonly number[], addOns: readonly PieceStock[]): FixedWeights {
  return {
    kind: 'fixed',
    form: 'kettlebell',
    weights: weights.map((value) => ({ weight: kilograms(value), pieces: 1 })),
    addOns,
    ...named,
  };
}

function solved(...args: Parameters<typeof rigFor>) {
  const rig = rigFor(...args);
  if (rig.kind === 'none') throw new Error(rig.message);
  return solveRig(rig);
}

describe('solveRig', () => {
  const single = { hands: 1 } as const;

  it('takes the base with fewer pieces on it, then the heavier base', () => {
    const answer = solved(rack([10, 12.5], kgPlates([2.5, 5], 1)), single);
    if (answer.kind === 'none') throw new Error(answer.message);
    const found = answer.loads.map((one) => {
      const { load, loading } = answer.write(one);
      return [load, loading.kind === 'fixed' && loading.weight.value, loading.pieces];
    });
    expect(found).toEqual([
      [kg(10), 10, 1],
      [kg(12.5), 12.5, 1],
      // 12.5 + 2.5 and 10 + 5 are two pieces each
      [kg(15), 12.5, 2],
      // 12.5 + 5 is two pieces, 10 + 5 + 2.5 three
      [kg(17.5), 12.5, 2],
      [kg(20), 12.5, 3],
    ]);
  });

  it('lists 100,000 loads of all bases that take pieces, and no more', () => {
    // four decimal digits of grams: 10,000 sums on each weight
    const digits = kgPlates([0.001, 0.01, 0.1, 1], 9);
    const tens = Array.from({ length: 11 }, (_, index) => 10 * (index + 1));
    const most = solved(rack(tens.slice(0, 10), digits), single);
    expect(most.kind === 'solved' && most.loads.length).toBe(100_000);
    expect(solved(rack(tens, digits), single)).toMatchObject({ reason: 'too-many-loads' });
  });

  it('does not count bases that take nothing', () => {
    const use = { bodyWeight: kilograms(80), plates: kgPlates([0.001, 0.01, 0.1, 1, 10], 9) };
    const station = { kind: 'body', belt: {}, assistance: [kilograms(5)], ...named } as const;
    // 100,000 on the belt, the first of them nothing, and once with help
    const answer = solved(station, use);
    expect(answer.kind === 'solved' && answer.loads.length).toBe(100_001);
  });
});
