import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { reviewLog } from './reviewLog.ts';

describe('reviewLog', () => {
  it('reviews a year of five lifts and 600 sets in under 100 ms', () => {
    const lifts = ['cable-row', 'leg-press', 'chin-up', 'leg-extension', 'dip'];
    const log = Array.from({ length: 600 }, (_, i) => {
      const date = new Date(Date.UTC(2025, 2, 1 + Math.floor(i / 10) * 6))
        .toISOString()
        .slice(0, 10);
      return {
        date,
        exercise: lifts[i % 5] ?? '',
        set: 1 + (Math.floor(i / 5) % 2),
        load: { value: 40 + Math.floor(i / 60) * 2.5, unit: 'kg' as const },
        counts: 'total' as const,
        reps: 6 + (i % 4),
      };
    });
    const times = Array.from({ length: 5 }, () => {
      const before = performance.now();
      expect(reviewLog({ log, exercises, on: '2026-02-28' }).lifts).toHaveLength(5);
      return performance.now() - before;
    });
    expect(times.sort((a, b) => a - b)[2]).toBeLessThan(100);
  });
});
