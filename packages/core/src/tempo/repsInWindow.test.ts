import { describe, expect, it } from 'vitest';
import { repsInWindow } from './repsInWindow.ts';
import type { Tempo } from './Tempo.ts';

const bench: Tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 2,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 0,
};
const counted = { lastPause: 'counted' } as const;

describe('repsInWindow', () => {
  it('finds 7 to 10 reps of 6 s in 40 to 60 s: 42 s to 60 s', () => {
    expect(repsInWindow(bench, { minSeconds: 40, maxSeconds: 60 }, counted)).toEqual({
      kind: 'fits',
      fewest: { reps: 7, seconds: 42 },
      most: { reps: 10, seconds: 60 },
    });
  });

  it('names the counts on either side of a window that none fits', () => {
    expect(repsInWindow(bench, { minSeconds: 43, maxSeconds: 47 }, counted)).toEqual({
      kind: 'between',
      shorter: { reps: 7, seconds: 42 },
      longer: { reps: 8, seconds: 48 },
    });
    expect(repsInWindow(bench, { minSeconds: 0, maxSeconds: 5 }, counted)).toEqual({
      kind: 'between',
      shorter: { reps: 0, seconds: 0 },
      longer: { reps: 1, seconds: 6 },
    });
  });

  it('lets the last pause decide where it is left out', () => {
    const paused = { ...bench, pauseAfterLiftSeconds: 2 }; // 8 s, the last one 6 s
    const window = { minSeconds: 30, maxSeconds: 31 };
    expect(repsInWindow(paused, window, counted).kind).toBe('between');
    expect(repsInWindow(paused, window, { lastPause: 'left-out' })).toMatchObject({
      kind: 'fits',
      fewest: { reps: 4, seconds: 30 },
      most: { reps: 4, seconds: 30 },
    });
  });

  it('refuses a window that ends before it starts', () => {
    expect(() => repsInWindow(bench, { minSeconds: 60, maxSeconds: 40 }, counted)).toThrow(
      /minSeconds/,
    );
    expect(() => repsInWindow(bench, { minSeconds: 0, maxSeconds: 4000 }, counted)).toThrow(
      /maxSeconds/,
    );
  });
});
