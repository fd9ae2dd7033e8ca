import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from './dayNumber.ts';

describe('dayNumber', () => {
  it('counts days from the first of 1970, before it too', () => {
    expect(dayNumber('1970-01-01')).toBe(0);
    expect(dayNumber('1969-12-31')).toBe(-1);
    // 30 years of 365 days, 7 of them with a day more
    expect(dayNumber('2000-01-01')).toBe(30 * 365 + 7);
    expect(dateOfDay(30 * 365 + 7)).toBe('2000-01-01');
  });

  it('refuses what is no date, alone and in full', () => {
    for (const text of [
      '2026-02-30',
      '2026-13-01',
      '2026-3-02',
      '2026-03-2',
      '12026-03-02',
      '2026-03-021',
      '2026-03-02T18:00',
      ' 2026-03-02',
      '2026/03/02',
      '',
    ]) {
      expect(() => dayNumber(text)).toThrow(RangeError);
    }
  });
});
