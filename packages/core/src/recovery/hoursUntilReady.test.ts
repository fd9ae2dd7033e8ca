import { describe, expect, it } from 'vitest';
import { hoursUntilReady } from './hoursUntilReady.ts';

const noDoubt = { shift: 0, shiftSd: 0 };

describe('hoursUntilReady', () => {
  it('is the published fit: ln hours = 2.9 + 0.79 ln sets, 0.11 less for the trained', () => {
    expect(hoursUntilReady(1).likely).toBeCloseTo(Math.exp(2.9), 9);
    // 2.9 + 0.79 * 1.098612 = 3.767904
    expect(hoursUntilReady(3).likely).toBeCloseTo(Math.exp(3.767904), 4);
    expect(hoursUntilReady(3, 'new').likely).toBe(hoursUntilReady(3, 'recreational').likely);
    expect(hoursUntilReady(1, 'trained').likely).toBeCloseTo(Math.exp(2.79), 9);
  });

  it('spreads by 0.44 between people and 0.44 from time to time until a person is known', () => {
    // 1.2815516 * hypot(0.44, 0.44) = 0.797455
    expect(hoursUntilReady(1).earliest).toBeCloseTo(Math.exp(2.9 - 0.797455), 4);
    expect(hoursUntilReady(1).cautious).toBeCloseTo(Math.exp(2.9 + 0.797455), 3);
    // 1.2815516 * 0.44 = 0.563883
    expect(hoursUntilReady(1, 'recreational', noDoubt).cautious).toBeCloseTo(
      Math.exp(2.9 + 0.563883),
      3,
    );
  });

  it('adds what is known of a person to ln hours', () => {
    const slow = { shift: Math.log(2), shiftSd: 0.1 };
    expect(hoursUntilReady(1, 'recreational', slow).likely).toBeCloseTo(2 * Math.exp(2.9), 9);
  });

  it('takes doses from 0 to 1000', () => {
    expect(hoursUntilReady(0)).toEqual({ earliest: 0, likely: 0, cautious: 0 });
    expect(hoursUntilReady(1000).likely).toBeGreaterThan(0);
    for (const dose of [-0.01, 1000.01]) {
      expect(() => hoursUntilReady(dose)).toThrow('hoursUntilReady: hardSets must be');
    }
  });

  it('refuses a habit that is no number', () => {
    for (const [name, value] of [
      ['shiftSd', -0.01],
      ['shift', Number.NaN],
    ] as const) {
      const habit = { ...noDoubt, [name]: value };
      const refused = `hoursUntilReady: ${name} must be`;
      expect(() => hoursUntilReady(1, 'recreational', habit)).toThrow(refused);
    }
  });
});
