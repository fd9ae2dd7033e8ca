import { describe, expect, it } from 'vitest';
import { evidenceModel } from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';

describe('the evidence model against published errors', () => {
  it('adds to a report of repetitions left what a meta-analysis found people to leave out', () => {
    const { bias, spread, spreadPerRepLeft } = evidenceModel.reserve.value;
    const { rows } = readReference('rir-accuracy');
    expect(bias).toBe(rows[0]?.[3]);
    // trained lifters called 1 or 3 left with an error of SD 1.00
    const refalo = rows.find(
      ([study, , measure]) => /Refalo/.test(String(study)) && measure === 'raw error',
    );
    expect(refalo?.[4]).toBe('SD 1.00');
    expect(spread + spreadPerRepLeft).toBeLessThan(1.0 + 0.1);
    expect(spread + 3 * spreadPerRepLeft).toBeGreaterThan(1.0);
    // coaches watching a third of a set, many left, missed by 4.8 on average: SD about 6
    const early = spread + 20 * spreadPerRepLeft;
    expect(early).toBeGreaterThan(4.8);
    expect(early).toBeLessThan(7);
  });
});
