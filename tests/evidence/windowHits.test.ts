import { describe, expect, it } from 'vitest';
import { simulations } from './calibration.ts';
import { committedReport } from './committed.ts';
import { windowHits } from './windowHits.ts';

describe('the recommended load over simulated lifters', () => {
  it('lands failure in the window at least as often as the best single equation', () => {
    const { seed, trials } = simulations.windows;
    const hits = windowHits(seed, trials);
    console.table(hits.map((one) => ({ ...one, margin: one.ours - one.theirs })));
    for (const { ours, theirs } of hits) expect(ours).toBeGreaterThanOrEqual(theirs);
    // as the evidence report shows it
    expect(hits).toEqual(committedReport().calibration.windows.hits);
  }, 120_000);
});
