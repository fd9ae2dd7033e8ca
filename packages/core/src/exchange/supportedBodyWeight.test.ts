import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { supportedBodyWeight } from './supportedBodyWeight.ts';
import { supportedShares } from './supportedShares.ts';

describe('supportedBodyWeight', () => {
  // Shares of 69 and 75 % with the feet, 54 and 62 % with the knees on the floor, for 75 kg; 3.5 kg
  // allow for the studies differing by up to 5 points.
  it.each([
    ['feet-on-floor', 51.75, 56.25],
    ['knees-on-floor', 40.5, 46.5],
  ] as const)('%s at 75 kg', (form, top, bottom) => {
    const carried = supportedBodyWeight(form, 75);
    expect(Math.abs(carried.topKg.likely - top)).toBeLessThanOrEqual(3.5);
    expect(Math.abs(carried.bottomKg.likely - bottom)).toBeLessThanOrEqual(3.5);
  });

  // (67.0 + 65.1 + 69.16) / 3 = 67.09, (74.6 + 70.3 + 75.04) / 3 = 73.31,
  // (52.5 + 51.5 + 53.56) / 3 = 52.52, (60.1 + 56.6 + 61.80) / 3 = 59.50 percent.
  it('takes the mean of the published means', () => {
    expect(supportedShares['feet-on-floor'].top.mean).toBeCloseTo(0.6709, 3);
    expect(supportedShares['feet-on-floor'].bottom.mean).toBeCloseTo(0.7331, 3);
    expect(supportedShares['knees-on-floor'].top.mean).toBeCloseTo(0.5252, 3);
    expect(supportedShares['knees-on-floor'].bottom.mean).toBeCloseTo(0.595, 3);
  });

  it('gives a band, more at the bottom, never the whole body', () => {
    const { topKg, bottomKg, notes } = supportedBodyWeight('feet-on-floor', 100);
    expect(topKg.low).toBeLessThan(topKg.likely);
    expect(bottomKg.likely).toBeGreaterThan(topKg.likely);
    expect(bottomKg.high).toBeLessThan(100);
    expect(notes.join(' ')).toMatch(/not the same exercise/);
    expect(notes.join(' ')).toMatch(/Raised feet put more/);
  });

  // 0.671 and 0.733 of 80 kg; 80 % of people lie within 1.2816 deviations of 0.038 and 0.036.
  it('spreads as the measured people did', () => {
    const { topKg, bottomKg } = supportedBodyWeight('feet-on-floor', 80);
    expect([topKg.low, topKg.likely, topKg.high].map((kg) => kg.toFixed(2))).toEqual([
      '49.78',
      '53.68',
      '57.58',
    ]);
    expect([bottomKg.low, bottomKg.high].map((kg) => kg.toFixed(2))).toEqual(['54.95', '62.33']);
    expect(topKg.level).toBe(0.8);
  });

  it('grows in proportion to body weight and refuses what is none', () => {
    const light = supportedBodyWeight('knees-on-floor', 60);
    const heavy = supportedBodyWeight('knees-on-floor', 120);
    expect(heavy.topKg.likely).toBeCloseTo(2 * light.topKg.likely, 9);
    expect(() => supportedBodyWeight('knees-on-floor', 0)).toThrow(
      /supportedBodyWeight: bodyWeightKg/,
    );
    expect(() => supportedBodyWeight('feet-on-floor', Number.NaN)).toThrow(RangeError);
  });

  it('agrees with the share that the exercise carries', () => {
    const pushUp = exercises.find(({ id }) => id === 'push-up');
    expect(pushUp?.movedShare?.low).toBeCloseTo(supportedShares['feet-on-floor'].top.mean, 2);
    expect(pushUp?.movedShare?.high).toBeCloseTo(supportedShares['feet-on-floor'].bottom.mean, 2);
  });
});
