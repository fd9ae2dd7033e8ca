import { describe, expect, it } from 'vitest';
import type { Loading, Plate } from '../equipment/index.ts';
import { kg } from '../load/index.ts';
import { standsAtFullHeight } from './standsAtFullHeight.ts';

const plate = (value: number, diameterMm?: number, unit: 'kg' | 'lb' = 'kg'): Plate => ({
  weight: { value, unit },
  ...(diameterMm !== undefined && { diameterMm }),
});
const stands = (loading: Loading) => standsAtFullHeight({ load: kg(60), shown: kg(60), loading });
const onBar = (left: readonly Plate[], right: readonly Plate[]): Loading => ({
  kind: 'plates',
  stacks: [
    { place: 'left', plates: left },
    { place: 'right', plates: right },
  ],
  pieces: left.length + right.length,
});
const both = (...plates: readonly Plate[]) => stands(onBar(plates, plates));

describe('standsAtFullHeight', () => {
  it('goes by the diameter where it is known: 430 mm and more', () => {
    expect(both(plate(5, 430))).toBe(true);
    expect(both(plate(25, 429))).toBe(false);
  });

  it('takes plates of 20 kg or 45 lb as full-size where no diameter is given', () => {
    // 45 lb is 20.41 kg, so 20 kg is the lighter of the two
    expect(both(plate(20))).toBe(true);
    expect(both(plate(45, undefined, 'lb'))).toBe(true);
    expect(both(plate(19.9))).toBe(false);
    expect(both(plate(44, undefined, 'lb'))).toBe(false);
  });

  it('needs one such plate on each end, beside whatever else', () => {
    expect(both(plate(20), plate(5))).toBe(true);
    expect(stands(onBar([plate(20)], [plate(15)]))).toBe(false);
    expect(both()).toBe(false);
  });

  it('is for plates only', () => {
    const weight = { value: 40, unit: 'kg' } as const;
    expect(stands({ kind: 'fixed', weight, hands: 1, addOns: [], pieces: 1 })).toBe(false);
  });
});
