import { describe, expect, it } from 'vitest';
import { plateSize } from './plateSize.ts';

describe('plateSize', () => {
  it('has the usual diameter of a 20 kg disc', () => {
    expect(plateSize(20).diameterMm).toBe(450);
  });

  it('gives each disc the thickness that iron needs', () => {
    // 20 kg of iron at 7.2 g/cm³ is 2778 cm³; over a 45 cm disc (1590 cm²) filled to 72 % that is 24 mm.
    expect(plateSize(20).thicknessMm).toBeCloseTo(24.3, 1);
  });

  it('never shrinks as the weight grows', () => {
    const weights = Array.from({ length: 120 }, (_, at) => 0.25 + at * 0.5);
    const diameters = weights.map((kg) => plateSize(kg).diameterMm);
    expect(diameters).toEqual([...diameters].sort((a, b) => a - b));
    for (const kg of weights) expect(plateSize(kg).thicknessMm).toBeGreaterThanOrEqual(8);
  });
});
