import { describe, expect, it } from 'vitest';
import { notCounted, recoveryModel } from '../../packages/core/src/recovery/index.ts';
import { fitRecovery, fitSpread } from './fitRecovery.ts';
import { readReference } from './readReference.ts';

describe('the constants of the recovery model', () => {
  const cell = (id: string, row: string, column: number) =>
    readReference(id).rows.find(([name]) => String(name).startsWith(row))?.[column];

  it('count a helper as half a set, the convention that fitted best', () => {
    expect(recoveryModel.indirect.weight).toBe(cell('set_counting', 'indirect set weight', 1));
  });

  it('cost a stage past failure what it cost in force: 56.5 against 38.3 %', () => {
    const past = Number(cell('beyond_failure_acute', 'forced reps', 1));
    const plain = Number(cell('beyond_failure_acute', '12RM', 1));
    // rounded to a half set
    expect(Math.abs(1 + recoveryModel.pastFailure.addedPerStage - past / plain)).toBeLessThan(0.05);
  });

  it('leave age out, where comparisons disagree about the direction', () => {
    expect(cell('recovery_modifiers', 'age', 2)).toContain('4 worse, 2 better, 6 no difference');
    expect(notCounted.map(({ factor }) => factor)).toContain('age');
  });

  it('are the fit to the rows, rounded to two decimals', () => {
    const fit = fitRecovery();
    const { source: _, ...constants } = recoveryModel.fitted;
    for (const [name, value] of Object.entries(constants)) {
      // half of the last decimal kept, and 1e-4 for where the search stops
      expect(Math.abs(fit[name as keyof typeof constants] - value)).toBeLessThanOrEqual(0.0051);
    }
  });

  it('spread as the ten people of McLester 2001 did', () => {
    const { betweenPeople, fromTimeToTime } = recoveryModel.spread;
    expect(Math.abs(Math.hypot(betweenPeople, fromTimeToTime) - fitSpread().sd)).toBeLessThan(0.01);
  });
});
