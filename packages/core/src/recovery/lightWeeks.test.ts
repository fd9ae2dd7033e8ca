import { describe, expect, it } from 'vitest';
import { lightWeeks } from './lightWeeks.ts';

describe('lightWeeks', () => {
  it('takes every fourth week from Monday to Sunday', () => {
    // week 1 begins on 2 March; week 4 on the 23rd, week 8 four weeks later
    expect(lightWeeks('2026-03-02', 8, 4)).toEqual([
      { from: '2026-03-23', to: '2026-03-29' },
      { from: '2026-04-20', to: '2026-04-26' },
    ]);
  });

  it('has none in fewer weeks than that', () => {
    expect(lightWeeks('2026-03-02', 3, 4)).toEqual([]);
  });

  it('takes 1 to 104 weeks and every 2nd to every 52nd', () => {
    expect(lightWeeks('2026-03-02', 1, 2)).toEqual([]);
    expect(lightWeeks('2026-03-02', 104, 52)).toHaveLength(2);
    for (const [weeks, every, name] of [
      [0, 2, 'weeks'],
      [105, 2, 'weeks'],
      [8, 1, 'every'],
      [104, 53, 'every'],
    ] as const) {
      const refused = `lightWeeks: ${name} must be`;
      expect(() => lightWeeks('2026-03-02', weeks, every)).toThrow(refused);
    }
  });
});
