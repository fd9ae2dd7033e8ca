import { describe, expect, it } from 'vitest';
import { generalCurve } from './generalCurve.ts';
import { kappaAtTempo } from './kappaAtTempo.ts';
import { windowShares } from './windowShares.ts';

describe('windowShares', () => {
  it('gives the shares whose means round into the window', () => {
    // alpha = 1, kappa 40: 40 / (40 + 11.5), 40 / (40 + 10), 40 / (40 + 8.5)
    const { lightest, middle, heaviest } = windowShares(
      { minReps: 10, maxReps: 12 },
      { kappa: 40, alpha: 1 },
    );
    expect(lightest).toBeCloseTo(40 / 51.5, 14);
    expect(middle).toBeCloseTo(0.8, 14);
    expect(heaviest).toBeCloseTo(40 / 48.5, 14);
  });

  it('asks the whole capacity for a single', () => {
    expect(windowShares({ minReps: 1, maxReps: 1 }).heaviest).toBe(1);
    expect(windowShares({ minReps: 1, maxReps: 1 }, generalCurve, 0.9).heaviest).toBe(0.9);
  });

  it('asks more load as a slow block goes from 15 to 6 repetitions of 6 seconds', () => {
    const ladder = [15, 12, 10, 8, 6];
    const curve = { kappa: kappaAtTempo(generalCurve.kappa, 6).kappa.likely, alpha: 0.5 };
    const shares = ladder.map(
      (reps) => windowShares({ minReps: reps, maxReps: reps }, curve).middle,
    );
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(new Set(shares).size).toBe(ladder.length);
  });

  it('refuses a window that ends before it begins', () => {
    expect(() => windowShares({ minReps: 8, maxReps: 6 })).toThrow(/maxReps/);
    expect(() => windowShares({ minReps: 0, maxReps: 6 })).toThrow(/minReps/);
    expect(() => windowShares({ minReps: 200, maxReps: 200 })).not.toThrow();
    expect(() => windowShares({ minReps: 6, maxReps: 201 })).toThrow(
      'windowShares: maxReps must be',
    );
    expect(() => windowShares({ minReps: 201, maxReps: 201 })).toThrow(
      'windowShares: minReps must be',
    );
  });
});
