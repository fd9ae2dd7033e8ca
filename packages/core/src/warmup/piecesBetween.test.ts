import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLoading } from '../equipment/index.ts';
import { smallRamp } from './oracle/smallRamps.ts';
import { piecesBetween } from './piecesBetween.ts';

describe('piecesBetween', () => {
  it('counts the steps that changeLoading writes down, on all equipment', () => {
    fc.assert(
      fc.property(smallRamp, fc.nat(), fc.nat(), ({ ways }, one, other) => {
        const [from, to] = [one % ways.length, other % ways.length];
        const steps = changeLoading(
          ways[from]?.loading ?? 'nothing',
          ways[to]?.loading ?? 'nothing',
        );
        const pieces = piecesBetween(ways);
        expect(pieces(from, to)).toBe(steps.pieces);
        expect(pieces(from, to)).toBe(steps.pieces);
      }),
      { numRuns: 500 },
    );
  });
});
