import { describe, expect, it } from 'vitest';
import { plateWords } from './plateWords.ts';

const plate = (value: number, unit: 'kg' | 'lb' = 'kg') => ({ weight: { value, unit } });

describe('plateWords', () => {
  it('says the unit once where there is one', () => {
    expect(plateWords([plate(20), plate(10), plate(1.25)])).toBe('20 + 10 + 1.25\u00a0kg');
  });

  it('says it with each plate where units mix', () => {
    expect(plateWords([plate(45, 'lb'), plate(5)])).toBe('45\u00a0lb + 5\u00a0kg');
  });

  it('counts equal plates', () => {
    expect(plateWords([plate(20), plate(20), plate(5)])).toBe('2\u00a0×\u00a020 + 5\u00a0kg');
  });

  it('is empty for an empty side', () => {
    expect(plateWords([])).toBe('');
  });
});
