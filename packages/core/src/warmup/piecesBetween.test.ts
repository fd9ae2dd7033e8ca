import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLoading } from '../equipment/index.ts';
import { smallRamp } from './oracle/smallRamps.ts';
import { piecesBetween } from './piecesBetween.ts';

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
});
