import { describe, expect, it } from 'vitest';
import { kg, type Load } from '../load/index.ts';
import { forecastReps } from './forecastReps.ts';
import { generalCurve } from './generalCurve.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import type { PerformedSet } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import { repsAtShare } from './repsAtShare.ts';
import { strengthFrom } from './strengthFrom.ts';

const set = (load: number, reps: number): PerformedSet => ({
  load: kg(load),
  reps,
  end: { kind: 'failure' },
  day: 0,
  secondsPerRep: 3,
});

function believe(sets: readonly PerformedSet[], max?: { kg: number; doubt: number }) {
  const belief = strengthFrom({ sets, prior: priorFor(generalCurve, max), today: 0 });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  return belief;
}

const learned = believe([set(100, 5), set(80, 11), set(100, 5), set(90, 8)]);

describe('forecastReps', () => {
  it('gives probabilities', () => {
    const { chances } = forecastReps(learned, { load: kg(90), secondsPerRep: 3 });
    expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
    for (const chance of chances) expect(chance).toBeGreaterThanOrEqual(0);
  });

  it('expects again what it has seen', () => {
    expect(forecastReps(learned, { load: kg(100), secondsPerRep: 3 }).reps.likely).toBe(5);
    expect(forecastReps(learned, { load: kg(90), secondsPerRep: 3 }).reps.likely).toBe(8);
  });

  it('has the count of the curve and the repeat error as its spread when all else is known', () => {
    const sure = believe([], { kg: 100, doubt: 0.001 });
    const { chances } = forecastReps(sure, { load: kg(90), secondsPerRep: 3 });
    const mean = chances.reduce((sum, chance, reps) => sum + chance * reps, 0);
    const square = chances.reduce((sum, chance, reps) => sum + chance * (reps - mean) ** 2, 0);
    // mean over kappa: 1 + E[kappa] * 0.1 / sqrt(0.9), E[kappa] = 38.2 * exp(0.45^2 / 2)
    expect(mean).toBeCloseTo(repsAtShare(0.9, { kappa: 38.2 * Math.exp(0.10125), alpha: 0.5 }), 1);
    // kappa: 4.456 * sqrt(exp(0.45^2) - 1); form of the day 0.025 * 44.9 reps per ln load, by the
    // larger kappa; count 0.5 + 0.045 * 5.46 and 5 % of it; rounding 1/12
    const kappa = 4.456 * Math.sqrt(Math.exp(0.2025) - 1);
    const day = 0.025 * 44.9;
    const count = Math.hypot(0.5 + 0.045 * 5.46, 0.05 * 5.46, Math.sqrt(1 / 12));
    expect(Math.sqrt(square)).toBeCloseTo(Math.hypot(kappa, day, count), 0);
  });

  it('never gives more for a heavier load', () => {
    const likely = [60, 70, 80, 90, 100, 110, 120].map(
      (load) => forecastReps(learned, { load: kg(load), secondsPerRep: 3 }).reps.likely,
    );
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
    expect(likely.at(-1)).toBe(0);
  });

  it('widens below half of the one-rep max more than the curve alone would, and says so', () => {
    const light = forecastReps(learned, { load: kg(40), secondsPerRep: 3 });
    const heavy = forecastReps(learned, { load: kg(80), secondsPerRep: 3 });
    const relative = ({ low, likely, high }: { low: number; likely: number; high: number }) =>
      (high - low) / likely;
    expect(relative(light.reps)).toBeGreaterThan(relative(heavy.reps));
    expect(light.doubts).toEqual(['light-load', 'many-reps']);
    expect(heavy.doubts).toEqual([]);
  });

  it('gives fewer repetitions and a longer set at a slower pace', () => {
    const at = (secondsPerRep: number) => forecastReps(learned, { load: kg(80), secondsPerRep });
    expect(at(6).reps.likely).toBeLessThan(at(3).reps.likely);
    expect(at(6).setSeconds?.likely).toBeGreaterThan(at(3).setSeconds?.likely ?? 0);
  });

  it('refuses the narrow answer outside 2 to 10 seconds, and without a pace', () => {
    const width = (secondsPerRep?: number) => {
      const conditions = secondsPerRep === undefined ? {} : { secondsPerRep };
      const { reps, doubts, setSeconds } = forecastReps(learned, { load: kg(80), ...conditions });
      return { share: (reps.high - reps.low) / reps.likely, doubts, setSeconds };
    };
    expect(width(20).share).toBeGreaterThan(2 * width(9).share);
    expect(width(20).doubts).toEqual(['pace-too-slow']);
    expect(width(1).doubts).toEqual(['pace-too-fast']);
    expect(width().doubts).toEqual(['pace-unknown']);
    expect(width().setSeconds).toBeUndefined();
    expect(width().share).toBeGreaterThan(width(3).share);
  });

  it('gives fewer for a tired lifter, and is less sure', () => {
    const fresh = forecastReps(learned, { load: kg(80), secondsPerRep: 3 });
    const tired = forecastReps(learned, { load: kg(80), secondsPerRep: 3, capacity: 0.85 });
    expect(tired.reps.likely).toBeLessThan(fresh.reps.likely - 3);
  });

  it('says what the sets leave open', () => {
    const floor = believe([{ ...set(80, 8), end: { kind: 'more', atLeast: 1 } }]);
    expect(forecastReps(floor, { load: kg(80), secondsPerRep: 3 }).doubts).toContain('floor-only');
  });

  it('warns of a step to double the load instead of asking forty repetitions before it', () => {
    // raises: 2.5 kg for many, to be ready for 5 kg by 8; a common equation says 46
    const ready = believe([set(5, 8)]);
    const { reps, doubts, share } = forecastReps(ready, { load: kg(2.5), secondsPerRep: 3 });
    expect(share.likely).toBeLessThan(0.5);
    expect(doubts).toEqual(['light-load', 'many-reps']);
    expect(reps.low).toBeLessThan(25);
    expect(reps.high).toBeGreaterThan(46);
  });

  it('shows the load as a share of the one-rep max of today', () => {
    const { share } = forecastReps(learned, { load: kg(100), secondsPerRep: 3 });
    expect(share.low).toBeLessThan(share.likely);
    expect(share.likely).toBeGreaterThan(0.85);
    expect(share.likely).toBeLessThan(0.93);
  });

  it('takes every number at the limits of its range, and names what lies beyond', () => {
    const ask =
      (load: Load, more: { secondsPerRep?: number; capacity?: number } = {}) =>
      () =>
        forecastReps(learned, { load, ...more });
    for (const fine of [
      ask(1 as Load),
      ask(kg(80), { secondsPerRep: 0.2 }),
      ask(kg(80), { secondsPerRep: 120 }),
      ask(kg(80), { capacity: 1 }),
    ]) {
      expect(fine).not.toThrow();
    }
    for (const [name, bad] of [
      ['load', ask(kg(0))],
      ['secondsPerRep', ask(kg(80), { secondsPerRep: 0.19 })],
      ['secondsPerRep', ask(kg(80), { secondsPerRep: 121 })],
      ['capacity', ask(kg(80), { capacity: 0 })],
      ['capacity', ask(kg(80), { capacity: 1.01 })],
    ] as const) {
      expect(bad).toThrow(`forecastReps: ${name} must be`);
    }
  });

  it('has its share, its seconds and its counts at the level asked for', () => {
    for (const level of [0.8, 0.5]) {
      const { reps, share, setSeconds, chances } = forecastReps(
        learned,
        { load: kg(80), secondsPerRep: 4 },
        ...(level === 0.8 ? [] : [level]),
      );
      const max = oneRepMaxKg(learned, level, 'today');
      expect(share).toEqual({
        low: 80 / max.high,
        likely: 80 / max.likely,
        high: 80 / max.low,
        level,
      });
      const { low, likely, high } = reps;
      expect(setSeconds).toEqual({ low: 4 * low, likely: 4 * likely, high: 4 * high, level });
      const upTo = (count: number) =>
        chances.slice(0, count + 1).reduce((sum, one) => sum + one, 0);
      expect(upTo(high) - upTo(low - 1)).toBeGreaterThanOrEqual(level);
      expect(upTo(high - 1) - upTo(low)).toBeLessThan(level);
    }
  });
});
