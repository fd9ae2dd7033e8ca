import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, type Load, subtractLoad } from '../load/index.ts';
import { kgBar } from './oracle/exampleGear.ts';
import { fewestPiecesByMip } from './oracle/fewestPiecesByMip.ts';
import { smallStock } from './oracle/smallGyms.ts';
import { reachableLoads } from './reachableLoads.ts';

describe('reachableLoads against a general integer-program solver', () => {
  it('needs as many pieces, and calls out of reach what the solver finds infeasible', async () => {
    const fewestPieces = await fewestPiecesByMip();
    fc.assert(
      fc.property(smallStock, fc.nat(), fc.integer({ min: 1, max: 999 }), (plates, pick, grams) => {
        const answer = reachableLoads(kgBar(20), { plates });
        if (answer.kind === 'none') throw new Error(answer.message);
        const chosen = answer.loads[pick % answer.loads.length] ?? answer.loads[0];
        const onBar = subtractLoad(chosen.load, kg(20));
        expect(fewestPieces(plates, onBar)).toBe(chosen.loading.pieces);
        const other = (onBar + kg(grams / 1000)) as Load;
        const reachable = answer.loads.some(({ load }) => subtractLoad(load, kg(20)) === other);
        expect(fewestPieces(plates, other) !== 'infeasible').toBe(reachable);
      }),
      { numRuns: 150 },
    );
  });
});
