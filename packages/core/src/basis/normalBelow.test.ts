import { describe, expect, it } from 'vitest';
import { normalBelow } from './normalBelow.ts';
import { normalDensity } from './normalDensity.ts';

describe('normalBelow', () => {
  it('agrees with the printed table of the normal distribution', () => {
    // Abramowitz & Stegun, table 26.1
    expect(normalBelow(0)).toBeCloseTo(0.5, 7);
    expect(normalBelow(1)).toBeCloseTo(0.841344746, 7);
    expect(normalBelow(-1.96)).toBeCloseTo(0.024997895, 7);
    expect(normalBelow(3)).toBeCloseTo(0.998650102, 7);
  });

  it('keeps its digits far below', () => {
    expect(normalBelow(-6) / 9.865876e-10).toBeCloseTo(1, 5);
  });

  it('is the sum of the density', () => {
    let sum = 0;
    for (let z = -8; z < 1; z += 0.001) sum += 0.001 * normalDensity(z + 0.0005);
    expect(sum).toBeCloseTo(normalBelow(1), 6);
  });
});
