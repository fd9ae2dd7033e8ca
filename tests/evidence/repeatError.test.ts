import { describe, expect, it } from 'vitest';
import {
  evidenceModel,
  repsAtShare,
  strengthDrift,
} from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';

describe('the evidence model against published errors', () => {
  it('repeats a count as closely as a bench press was repeated, at 90 and at 70 %', () => {
    const { base, perRep } = evidenceModel.repeat.value;
    for (const [percent, , , , , , low, high] of readReference('mitter-2022-reliability').rows) {
      const error = base + perRep * repsAtShare(Number(percent) / 100);
      // 90 % highest-density interval of the standard error of measurement
      expect(error).toBeGreaterThan(Number(low));
      expect(error).toBeLessThan(Number(high));
    }
  });

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

  it('can follow the strongest change that was seen, 31.7 % in 18 weeks, within three SD', () => {
    const [, gain] = readReference('braith-1993-training-shift').rows;
    const sd = Math.sqrt(strengthDrift.maxPerDay * 7 * 18);
    expect(Math.log(1 + Number(gain?.[2]) / 100) / sd).toBeLessThan(3);
  });
});
