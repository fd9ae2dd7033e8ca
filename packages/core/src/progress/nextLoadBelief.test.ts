import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import {
  enduranceCurves,
  forecastReps,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
} from '../strength/index.ts';
import { rackOf, sessionOn } from './gym.testing.ts';
import type { LoadAdvice } from './LoadAdvice.ts';
import { nextLoad } from './nextLoad.ts';

const on = '2026-03-12';
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const loadOf = (advice: LoadAdvice) => ('load' in advice ? toKg(advice.load.load) : undefined);

describe('the step with a posterior', () => {
  const belief = (reps: number, load = 50) => {
    const known = strengthFrom({
      sets: [0, 2, 4].map((day) => ({
        load: kg(load),
        reps,
        end: { kind: 'failure' },
        day: 20_500 + day,
      })),
      prior: priorFor(enduranceCurves['leg-press']),
      today: 20_506,
    });
    if (known.kind !== 'posterior') throw new Error('nothing known');
    return known;
  };
  const window = { minReps: 8, maxReps: 12 };
  const rack = rackOf('kg', 45, 50, 51, 52, 53, 54, 55);
  const sessions = [12, 12].map((reps, i) => sessionOn(`2026-03-0${i + 5}`, kilos(50), [reps]));
  const question = { ...rack, sessions, window, on };
  const chances = (posterior: StrengthPosterior, load: number, reserve = 0) => {
    const all = forecastReps(posterior, { load: kg(load) }).chances;
    const sum = (from: number, to?: number) =>
      all.slice(from, to).reduce((total, chance) => total + chance, 0);
    return {
      before: sum(0, 8 + reserve),
      inside: sum(8 + reserve, 13 + reserve),
      beyond: sum(13 + reserve),
    };
  };

  it('goes to the load that most likely ends inside the window', () => {
    const posterior = belief(15);
    const advice = nextLoad({ ...question, posterior });
    const best = [51, 52, 53, 54, 55].reduce((a, b) =>
      chances(posterior, b).inside > chances(posterior, a).inside ? b : a,
    );
    expect(best).toBe(53);
    expect(loadOf(advice)).toBe(best);
    if (advice.kind !== 'raise') throw new Error(advice.kind);
    for (const part of ['before', 'inside', 'beyond'] as const) {
      expect(advice.chance?.[part]).toBeCloseTo(chances(posterior, best)[part], 9);
    }
    // the aim is the likely count, within the window
    const { likely } = forecastReps(posterior, { load: kg(best) }).reps;
    expect(advice.aim).toBe(Math.min(12, Math.max(8, Math.round(likely))));
  });

  it('moves the window up by the repetitions that are left', () => {
    const posterior = belief(16);
    const advice = nextLoad({
      ...question,
      posterior,
      repsInReserve: 3,
      sessions: sessions.slice(1),
    });
    if (advice.kind !== 'repeat') throw new Error(advice.kind);
    expect(advice.because).toBe('top-reached-once');
    const at = chances(posterior, 50, 3);
    for (const part of ['before', 'inside', 'beyond'] as const) {
      expect(advice.chance?.[part]).toBeCloseTo(at[part], 9);
    }
    const raise = nextLoad({ ...question, posterior, repsInReserve: 3 });
    if (raise.kind !== 'raise') throw new Error(raise.kind);
    const { likely } = forecastReps(posterior, { load: raise.load.load }).reps;
    expect(raise.aim).toBe(Math.min(12, Math.max(8, Math.round(likely - 3))));
  });

  it('forecasts at the pace of the sets', () => {
    const posterior = belief(16);
    const once = { ...question, posterior, sessions: sessions.slice(1) };
    const [usual, slow] = [nextLoad(once), nextLoad({ ...once, secondsPerRep: 8 })];
    if (usual.kind !== 'repeat' || slow.kind !== 'repeat') throw new Error('not repeated');
    expect(slow.chance?.before).toBeGreaterThan(usual.chance?.before ?? 1);
  });

  it('keeps the load from the chance on that a rule holds for too heavy', () => {
    const posterior = belief(9);
    const advice = nextLoad({ ...question, posterior, rules: { tooHeavyChance: 1.1 } });
    if (advice.kind !== 'raise') throw new Error(advice.kind);
    const { before = 0 } = advice.chance ?? {};
    const at = (tooHeavyChance: number) =>
      nextLoad({ ...question, posterior, rules: { tooHeavyChance } });
    expect(at(before)).toMatchObject({ kind: 'repeat', because: 'forecast-against', aim: 12 });
    expect(at(before + 1e-9).kind).toBe('raise');
  });

  it('takes a missed load down to the best of the eight below it', () => {
    const posterior = belief(2, 100);
    const values = [60, 62, 64, 66, 68, 70, 72, 74, 76, 78, 80, 100];
    const missed = {
      ...rackOf('kg', ...values),
      sessions: [sessionOn('2026-03-09', kilos(100), [2])],
      window,
      on,
      posterior,
    };
    const advice = nextLoad(missed);
    const best = values
      .slice(3, 11)
      .reduce((a, b) => (chances(posterior, b).inside >= chances(posterior, a).inside ? b : a));
    expect(loadOf(advice)).toBe(best);
    expect(advice).toMatchObject({ kind: 'lower', aim: 8 });
    expect(advice.kind === 'lower' && advice.chance?.inside).toBeCloseTo(
      chances(posterior, best).inside,
      9,
    );
    const { before } = chances(posterior, 100);
    const at = (tooHeavyChance: number) => nextLoad({ ...missed, rules: { tooHeavyChance } }).kind;
    expect(at(before - 1e-9)).toBe('lower');
    expect(at(before + 1e-9)).toBe('repeat');
    // of loads on both sides of the best one the best
    const around = nextLoad({ ...missed, ...rackOf('kg', 80, 85, 90, 95, 100) });
    expect(loadOf(around)).toBe(90);
    // from exactly the chance on that the rule holds
    const kept = nextLoad({ ...missed, rules: { tooHeavyChance: 1.1 } });
    if (kept.kind !== 'repeat') throw new Error(kept.kind);
    expect(at(kept.chance?.before ?? 0)).toBe('lower');
    // with nothing lighter there is nothing to go down to
    expect(nextLoad({ ...missed, ...rackOf('kg', 100, 110) })).toMatchObject({
      kind: 'repeat',
      because: 'missed',
    });
  });
});
