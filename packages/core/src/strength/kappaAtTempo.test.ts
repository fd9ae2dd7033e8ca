import { describe, expect, it } from 'vitest';
import { kappaAtTempo } from './kappaAtTempo.ts';

describe('kappaAtTempo', () => {
  it('leaves kappa alone at the reference pace', () => {
    expect(kappaAtTempo(38.5, 3)).toEqual({
      kind: 'within',
      kappa: { low: 38.5, likely: 38.5, high: 38.5, level: 0.8 },
    });
  });

  it('follows the power law worked by hand', () => {
    // 6 s is twice 3 s: 2^-0.55 = 0.68302, 2^-0.794 = 0.57674, 2^-0.4 = 0.75786
    const { kind, kappa } = kappaAtTempo(40, 6);
    expect(kind).toBe('within');
    expect(kappa.likely).toBeCloseTo(27.321, 3);
    expect(kappa.low).toBeCloseTo(23.07, 2);
    expect(kappa.high).toBeCloseTo(30.314, 3);
  });

  it('grows at a quicker pace, most by the largest exponent that was seen', () => {
    // 2 s: 1.5^0.4 = 1.17608, 1.5^0.55 = 1.24985, 1.5^0.794 = 1.37984
    const { kappa } = kappaAtTempo(40, 2);
    expect(kappa.low).toBeCloseTo(47.043, 2);
    expect(kappa.likely).toBeCloseTo(49.994, 2);
    expect(kappa.high).toBeCloseTo(55.194, 2);
  });

  it('holds at both ends of 2 to 10 seconds and not beyond', () => {
    expect(kappaAtTempo(40, 2).kind).toBe('within');
    expect(kappaAtTempo(40, 10).kind).toBe('within');
    expect(kappaAtTempo(40, 1.99).kind).toBe('faster');
    expect(kappaAtTempo(40, 10.01).kind).toBe('slower');
  });

  it('says next to nothing outside: from one repetition up, or from no gain at all', () => {
    expect(kappaAtTempo(40, 20).kappa.low).toBe(0);
    expect(kappaAtTempo(40, 1).kappa.low).toBe(40);
    // the high end by the exponent that gives most: (20 / 3)^-0.4 = 0.46818, 3^0.794 = 2.39250
    expect(kappaAtTempo(40, 20).kappa.high).toBeCloseTo(18.727, 2);
    expect(kappaAtTempo(40, 1).kappa.high).toBeCloseTo(95.7, 1);
  });

  it('refuses a pace that is no pace', () => {
    for (const seconds of [0.2, 120]) expect(() => kappaAtTempo(40, seconds)).not.toThrow();
    for (const seconds of [0.19, 121]) {
      expect(() => kappaAtTempo(40, seconds)).toThrow('kappaAtTempo: secondsPerRep must be');
    }
    expect(() => kappaAtTempo(0, 3)).toThrow('kappaAtTempo: kappa must be');
  });
});
