import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Item, mostValue } from './mostValue.ts';

const item = fc
  .record({
    least: fc.integer({ min: 0, max: 1 }),
    more: fc.integer({ min: 0, max: 3 }),
    first: fc.integer({ min: 1, max: 100 }),
    each: fc.integer({ min: 1, max: 100 }),
  })
  .map(
    ({ least, more, first, each }): Item => ({
      least,
      most: least + more,
      seconds: (parts) => (parts === 0 ? 0 : first + each * parts),
    }),
  );
/** Items that overlap: every part of item i counts for two of four things, each worth its root. */
const value = (parts: readonly number[]) =>
  [0, 1, 2, 3]
    .map((thing) =>
      parts.reduce(
        (sum, count, at) => sum + (at % 4 === thing || (at + 1) % 4 === thing ? count : 0),
        0,
      ),
    )
    .reduce((sum, count) => sum + Math.sqrt(count), 0);

function every(items: readonly Item[]): readonly (readonly number[])[] {
  return items.reduce<readonly (readonly number[])[]>(
    (found, { least, most }) =>
      found.flatMap((parts) =>
        Array.from({ length: most - least + 1 }, (_, more) => [...parts, least + more]),
      ),
    [[]],
  );
}

const secondsOf = (items: readonly Item[], parts: readonly number[]) =>
  items.reduce((sum, one, at) => sum + one.seconds(parts[at] ?? 0), 0);

describe('mostValue', () => {
  it('is worth as much as the best of all combinations that fit', () => {
    fc.assert(
      fc.property(
        fc.array(item, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 0, max: 900 }),
        (items, seconds) => {
          const fitting = every(items).filter((parts) => secondsOf(items, parts) <= seconds);
          const found = mostValue(items, seconds, value);
          expect(found === undefined).toBe(fitting.length === 0);
          if (found === undefined) return;
          expect(secondsOf(items, found)).toBeLessThanOrEqual(seconds);
          expect(value(found)).toBeCloseTo(Math.max(...fitting.map(value)), 9);
        },
      ),
    );
  });

  it('stays within the time where there are too many combinations to try', () => {
    const items = Array.from(
      { length: 12 },
      (): Item => ({
        least: 0,
        most: 5,
        seconds: (parts) => 60 * parts,
      }),
    );
    const found = mostValue(items, 600, value);
    expect(secondsOf(items, found ?? [])).toBe(600);
    // Ten parts over four things of equal worth: two and a half each, so no better than 4·√5.
    expect(value(found ?? [])).toBeGreaterThan(4 * Math.sqrt(5) - 0.2);
  });

  it('keeps more of the earlier of equals', () => {
    const equal: Item = { least: 0, most: 1, seconds: (parts) => 60 * parts };
    const count = (parts: readonly number[]) => parts.reduce((sum, one) => sum + one, 0);
    expect(mostValue([equal, equal, equal], 120, count)).toEqual([1, 1, 0]);
  });

  it('keeps the least of every item, and is nothing where that is too long', () => {
    const fixed: Item = { least: 1, most: 2, seconds: (parts) => 60 * parts };
    const count = (parts: readonly number[]) => parts.reduce((sum, one) => sum + one, 0);
    expect(mostValue([fixed, fixed], 120, count)).toEqual([1, 1]);
    expect(mostValue([fixed, fixed], 180, count)).toEqual([2, 1]);
    expect(mostValue([fixed, fixed], 119, count)).toBeUndefined();
    expect(mostValue([], 0, count)).toEqual([]);
  });

  it('gives up what loses least where there are too many combinations to try', () => {
    // part i is worth 1 + i hundredths: 6^7 combinations are above 50,000
    const items = Array.from(
      { length: 7 },
      (): Item => ({ least: 1, most: 6, seconds: (parts) => 10 * parts }),
    );
    const worth = (parts: readonly number[]) =>
      parts.reduce((sum, kept, at) => sum + kept * (1 + at / 100), 0);
    // 42 parts are 420 s; five of the first item go first, then of the second
    expect(mostValue(items, 420, worth)).toEqual([6, 6, 6, 6, 6, 6, 6]);
    expect(mostValue(items, 350, worth)).toEqual([1, 4, 6, 6, 6, 6, 6]);
    expect(mostValue(items, 70, worth)).toEqual([1, 1, 1, 1, 1, 1, 1]);
    expect(mostValue(items, 69, worth)).toBeUndefined();
    // of equals the later item gives up a part, so that the earlier one keeps more
    const equal = (parts: readonly number[]) => parts.reduce((sum, kept) => sum + kept, 0);
    expect(mostValue(items, 410, equal)).toEqual([6, 6, 6, 6, 6, 6, 5]);
  });

  it('gives up one part after the other from 50,001 combinations on', () => {
    // One item of 20 s is worth 3, three of 10 s are worth 2 each, and five of four parts nothing:
    // 2 · 2³ · 5⁵ are 50,000 combinations, of which two of 10 s are the best for 20 s. Giving up what
    // loses least ends with the one of 20 s.
    const part = (most: number, each: number): Item => ({
      least: 0,
      most,
      seconds: (parts) => each * parts,
    });
    const items = [part(1, 20), part(1, 10), part(1, 10), part(1, 10)];
    const nothing = Array.from({ length: 5 }, () => part(4, 10));
    const worths = [3, 2, 2, 2];
    const worth = (parts: readonly number[]) =>
      parts.reduce((sum, kept, at) => sum + kept * (worths[at] ?? 0), 0);
    const best = (...more: readonly Item[]) =>
      worth(mostValue([...items, ...nothing, ...more], 20, worth) ?? []);
    expect(best()).toBe(4);
    expect(best(part(1, 10))).toBe(3);
    // an item of which all parts stay adds no combination
    expect(best({ ...part(2, 0), least: 2 })).toBe(4);
  });

  it('tries all of fewer combinations', () => {
    // two parts together are worth more than any alone, which giving up one at a time never finds
    const pairs = (count: number) =>
      Array.from(
        { length: count },
        (): Item => ({ least: 0, most: 1, seconds: (parts) => 10 * parts }),
      );
    const worth = (parts: readonly number[]) =>
      parts.reduce((sum, kept) => sum + kept, 0) + 10 * (parts[0] ?? 0) * (parts[1] ?? 0);
    const [few, many] = [pairs(15), pairs(16)].map((items) => mostValue(items, 20, worth));
    expect(few?.slice(0, 2)).toEqual([1, 1]);
    expect(many).toHaveLength(16);
  });
});
