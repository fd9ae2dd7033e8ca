import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../../load/index.ts';
import type { FindingReport } from '../FindingStep.ts';
import { nextTrial } from './nextTrial.ts';

const choices = Array.from({ length: 60 }, (_, i) => ({ load: kg(5 + 5 * i) }));
const after = (
  report: FindingReport,
  {
    goal = 300,
    sure = 300,
    from = choices,
  }: { goal?: number; sure?: number; from?: typeof choices } = {},
) => {
  const tries = [{ load: kg(100), reps: 8, report }];
  // beyond the load that is sure, one set in nine fails
  const failing = ({ load }: { load: number }) => (load <= kg(sure) ? 0.1 : 0.11);
  const next = nextTrial(from, { tries }, kg(goal), failing);
  return next && `${toKg(next.choice.load)} ${next.because}`;
};

describe('nextTrial', () => {
  it('steps up by a factor that goes by what was left', () => {
    const steps = [0, 2, 3, 4, 5, 9, 10, 14, 15, 30].map((repsLeft) => after({ repsLeft }));
    expect(steps).toEqual([
      '115 small-step',
      '115 small-step',
      '130 small-step',
      '130 small-step',
      '160 large-step',
      '160 large-step',
      '180 large-step',
      '180 large-step',
      '200 large-step',
      '200 large-step',
    ]);
    expect(after('far-too-easy')).toBe('200 large-step');
  });

  it('stays at or under the load that is wanted and the load that hardly ever fails', () => {
    expect(after('far-too-easy', { goal: 120 })).toBe('120 small-step');
    expect(after('far-too-easy', { sure: 125 })).toBe('125 small-step');
    expect(after({ repsLeft: 3 }, { goal: 100 })).toBeUndefined();
    expect(after({ repsLeft: 3 }, { sure: 100 })).toBeUndefined();
  });

  it('goes down after failure or poor form, to the lightest if nothing is sure', () => {
    for (const report of ['failed', 'form-broke'] as const) {
      expect(after(report, { goal: 90 })).toBe('90 down');
      expect(after(report, { sure: 80 })).toBe('80 down');
      expect(after(report, { sure: 0 })).toBe('5 down');
      expect(after(report, { from: [] })).toBeUndefined();
    }
  });

  it('has nothing to go by without a set', () => {
    expect(nextTrial(choices, { tries: [] }, kg(100), () => 0)).toBeUndefined();
  });
});
