import { describe, expect, it } from 'vitest';
import { windowHits } from './windowHits.ts';

describe('the recommended load over simulated lifters', () => {
  it('lands failure in the window at least as often as the best single equation', () => {
    const hits = windowHits(31_415, 400);
    console.table(hits.map((one) => ({ ...one, margin: one.ours - one.theirs })));
    for (const { ours, theirs } of hits) expect(ours).toBeGreaterThanOrEqual(theirs);
  }, 120_000);
});
