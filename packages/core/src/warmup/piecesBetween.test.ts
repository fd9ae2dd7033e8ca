import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLoading, type Equipment, waysToLoad } from '../equipment/index.ts';
import { smallRamp } from './oracle/smallRamps.ts';
import { piecesBetween } from './piecesBetween.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const named = { id: 'it', name: 'It' };
const addOns = [1, 2].map((value) => ({ weight: kilograms(value), pieces: 4 }));

describe('piecesBetween', () => {
  it('counts the steps that changeLoading writes down, on all equipment', () => {
    fc.assert(
      fc.property(smallRamp, fc.array(fc.nat(), { maxLength: 6 }), ({ ways }, some) => {
        const pieces = piecesBetween(ways);
        const places = some.map((place) => place % ways.length);
        for (const [from, to] of places.flatMap((one) =>
          places.map((other) => [one, other] as const),
        )) {
          const steps = changeLoading(
            ways[from]?.loading ?? 'nothing',
            ways[to]?.loading ?? 'nothing',
          );
          expect(pieces(from, to)).toBe(steps.pieces);
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each<[string, Equipment]>([
    [
      'pins',
      {
        kind: 'stack',
        first: kilograms(5),
        rest: [{ weight: kilograms(5), pieces: 2 }],
        addOns,
        pulleyRatio: 1,
        ...named,
      },
    ],
    [
      'weights',
      {
        kind: 'fixed',
        form: 'dumbbell',
        weights: [4, 6].map((value) => ({ weight: kilograms(value), pieces: 2 })),
        addOns,
        ...named,
      },
    ],
  ])('counts them between all %s with all add-ons', (_, equipment) => {
    const answer = waysToLoad(equipment, {}, {}, 5);
    if (answer.kind === 'none') throw new Error(answer.message);
    const pieces = piecesBetween(answer.ways);
    for (const [from, one] of answer.ways.entries()) {
      for (const [to, other] of answer.ways.entries()) {
        expect(pieces(from, to)).toBe(changeLoading(one.loading, other.loading).pieces);
      }
    }
  });
});
