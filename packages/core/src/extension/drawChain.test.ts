import { describe, expect, it } from 'vitest';
import { jointFatigueRates } from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import { DRAW_DIMENSIONS, drawChain } from './drawChain.ts';
import { chinUp } from './exercises.testing.ts';

const stages = [{ kind: 'lift' }] as const;
const input = { stages, exercise: chinUp, intensity: 0.8, secondsPerRep: 3, seed: 0 };
const middle: readonly number[] = new Array(DRAW_DIMENSIONS).fill(0.5);
const at = (axis: number, share: number, over: Partial<typeof input> = {}) =>
  drawChain({ ...input, ...over }, middle.with(axis, share));

const near = (value: number) => expect.closeTo(value, 9);

describe('drawChain', () => {
  it('is the likely lifter in the middle', () => {
    // 1.15 · 1.25 / 1.15; the general curve, rates and factors as they are listed
    expect(drawChain(input, middle)).toEqual({
      kappa: near(38.2),
      alpha: 0.5,
      intensity: near(0.8),
      isometric: near(1.15),
      eccentric: near(1.25),
      partRange: near(1.1),
      rates: expect.objectContaining({ fatiguePerSecond: near(0.0097) }),
      loweringRates: expect.objectContaining({ fatiguePerSecond: near(0.0097 * 1.2) }),
      restPerSecond: near(0.013_65),
    });
    expect(drawChain(input, [])).toEqual(drawChain(input, middle));
  });

  // the deviate of nine tenths, and e to the power of 0.45 of them
  const spread = Math.exp(0.45 * 1.281_551_565_5);

  it.each<[string, number, (draw: ChainDraw) => number, number, number]>([
    ['endurance', 0, ({ kappa }) => kappa, 38.2 / spread, 38.2 * spread],
    ['tiring', 0, (draw) => draw.rates.fatiguePerSecond, 0.0097 * spread, 0.0097 / spread],
    ['load', 2, ({ intensity }) => intensity, 0.8 * 0.96, 0.8 * 1.04],
    ['holding', 3, ({ isometric }) => isometric, 1.05, 1.25],
    ['lowering with it', 3, (draw) => draw.eccentric, (1.05 / 1.15) * 1.25, (1.25 / 1.15) * 1.25],
    ['lowering', 4, ({ eccentric }) => eccentric, 1.25 * 0.95, 1.25 * 1.05],
    ['fatigue rate', 5, (draw) => draw.rates.fatiguePerSecond, 0.0097 * 0.7, 0.0097 * 1.45],
    ['and lowering', 5, (draw) => draw.loweringRates.fatiguePerSecond, 0.008_148, 0.016_878],
    ['rest', 6, ({ restPerSecond }) => restPerSecond, 0.013_65 * 0.6, 0.013_65 * 1.5],
    // 1.2 would be more than is held: 1.15
    ['part range', 7, ({ partRange }) => partRange, 1.03, 1.15],
    ['cost', 8, (draw) => draw.loweringRates.fatiguePerSecond, 0.0097 * 0.8, 0.0097 * 3.5],
  ])('has a tenth of the people below and a tenth above: %s', (_, axis, of, low, high) => {
    // the deviate is right to a billionth, which e and 38 make 1e-8
    expect(of(at(axis, 0.1))).toBeCloseTo(low, 7);
    expect(of(at(axis, 0.9))).toBeCloseTo(high, 7);
  });

  it('takes repetitions off for a slow pace, by the exponents that were seen', () => {
    const kappa = (share: number, secondsPerRep: number) => at(1, share, { secondsPerRep }).kappa;
    // twice the 3 s
    expect(kappa(0.1, 6)).toBeCloseTo(38.2 * 2 ** -0.4, 6);
    expect(kappa(0.5, 6)).toBeCloseTo(38.2 * 2 ** -0.55, 6);
    expect(kappa(0.9, 6)).toBeCloseTo(38.2 * 2 ** -0.794, 6);
    expect(kappa(0.5, 10)).toBeCloseTo(38.2 * (10 / 3) ** -0.55, 6);
    // twice the 10 s up to which the law was seen: down to half, and half way in the middle
    expect(kappa(0.5, 20)).toBeCloseTo(38.2 * (20 / 3) ** -0.55 * 2 ** -0.5, 6);
    expect(kappa(0.9, 20)).toBeCloseTo(38.2 * (20 / 3) ** -0.794 * 2 ** -0.9, 6);
  });

  it('never draws less than a quarter, nor less strength to hold or lower than to lift', () => {
    // one in a million lies 4.75 deviations below: 1 − 0.4 · 4.75 / 1.28 would be less than nothing
    expect(at(6, 1e-6).restPerSecond).toBeCloseTo(0.013_65 / 4, 9);
    expect(at(3, 1e-6)).toMatchObject({ isometric: 1, partRange: 1 });
    const weak = { exercise: { ...chinUp, eccentricFactor: 1.1 } };
    expect(at(0, 0.5, weak)).toMatchObject({ isometric: near(1.15), eccentric: near(1.15) });
  });

  it('takes the curve of the lifter and the rates of the joint where they are given', () => {
    const own = { curve: { kappa: 30, alpha: 1, kappaLogSd: 0 }, rates: jointFatigueRates.elbow };
    const draw = drawChain({ ...input, ...own }, middle.with(0, 0.9));
    expect(draw).toMatchObject({ kappa: near(30), alpha: 1 });
    expect(draw.rates).toMatchObject({ fatiguePerSecond: 0.009_12, recoveryPerSecond: 0.000_94 });
  });
});
