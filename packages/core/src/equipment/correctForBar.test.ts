import { describe, expect, it } from 'vitest';
import { kg, type Load } from '../load/index.ts';
import { correctForBar } from './correctForBar.ts';

describe('correctForBar', () => {
  it('moves every entry by the same difference, whatever the plates', () => {
    for (const logged of [kg(20), kg(52.5), kg(140)]) {
      const { corrected, difference } = correctForBar(logged, kg(20), kg(15));
      expect(difference).toBe(kg(-5));
      expect(corrected).toBe(logged - kg(5));
    }
  });

  it('corrects upwards too, and is undone by the reverse', () => {
    const { corrected } = correctForBar(kg(100), kg(20), kg(27.5));
    expect(corrected).toBe(kg(107.5));
    expect(correctForBar(corrected, kg(27.5), kg(20)).corrected).toBe(kg(100));
  });

  it('takes the bar alone', () => {
    expect(correctForBar(kg(20), kg(20), kg(15)).corrected).toBe(kg(15));
  });

  it('refuses a log entry lighter than the bar it was counted with', () => {
    expect(() => correctForBar(kg(15), kg(20), kg(15))).toThrow(/correctForBar/);
    expect(() => correctForBar(Number.NaN as Load, kg(20), kg(15))).toThrow(RangeError);
  });
});
