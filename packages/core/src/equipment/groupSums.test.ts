import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Choice, everyChoice } from './everyChoice.testing.ts';
import { type GroupKind, type GroupSums, groupSums } from './groupSums.ts';

/** Every choice of counts within both limits. */
function choicesWithin(
  kinds: readonly GroupKind[],
  massLimit: number,
  roomLimit: number,
): readonly Choice[] {
  return everyChoice(kinds).filter((sum) => sum.mass <= massLimit && sum.room <= roomLimit);
}

/** Fewest groups, then least room, then more of the heaviest kind, of the next, and so on. */
function bestOfEach(kinds: readonly GroupKind[], all: readonly Choice[]): readonly Choice[] {
  const heavyFirst = [...kinds.keys()].sort((a, b) => mass(kinds, b) - mass(kinds, a));
  const sorted = all.toSorted(
    (a, b) =>
      a.mass - b.mass ||
      a.groups - b.groups ||
      a.room - b.room ||
      heavyFirst.map((at) => (b.counts[at] ?? 0) - (a.counts[at] ?? 0)).find((x) => x !== 0) ||
      0,
  );
  return sorted.filter((sum, index) => sum.mass !== sorted[index - 1]?.mass);
}

const mass = (kinds: readonly GroupKind[], at: number) => kinds[at]?.mass ?? 0;

function written(sums: GroupSums | undefined, kinds: readonly GroupKind[]): readonly Choice[] {
  if (sums === undefined) throw new Error('too many');
  return Array.from({ length: sums.size }, (_, index) => {
    const counts = sums.countsAt(index);
    const room = kinds.reduce((sum, kind, at) => sum + kind.room * (counts[at] ?? 0), 0);
    return { mass: sums.massAt(index), groups: sums.groupsAt(index), room, counts };
  });
}

/** Small numbers, so that sums meet and limits are hit exactly; kinds in any order. */
const someKinds = fc.uniqueArray(
  fc.record({
    mass: fc.integer({ min: 1, max: 8 }),
    room: fc.integer({ min: 0, max: 4 }),
    groups: fc.integer({ min: 0, max: 4 }),
  }),
  { selector: (kind) => kind.mass, minLength: 1, maxLength: 4 },
);
const limit = fc.integer({ min: 0, max: 30 });

describe('groupSums', () => {
  it('keeps of all choices the best for each sum', () => {
    fc.assert(
      fc.property(someKinds, limit, fc.integer({ min: 0, max: 20 }), (kinds, most, room) => {
        const expected = bestOfEach(kinds, choicesWithin(kinds, most, room));
        expect(written(groupSums(kinds, most, room), kinds)).toEqual(expected);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps a way that needs more groups for what only then still fits', () => {
    const kinds = [
      { mass: 2, room: 5, groups: 1 },
      { mass: 1, room: 1, groups: 2 },
      { mass: 3, room: 4, groups: 1 },
    ];
    // 3 takes 4 of the 6, which leaves 2: not 5 for one of 2, but 1 + 1 for two of 1
    expect(written(groupSums(kinds, 99, 6), kinds)).toEqual([
      { mass: 0, groups: 0, room: 0, counts: [0, 0, 0] },
      { mass: 1, groups: 1, room: 1, counts: [0, 1, 0] },
      { mass: 2, groups: 1, room: 5, counts: [1, 0, 0] },
      { mass: 3, groups: 1, room: 4, counts: [0, 0, 1] },
      { mass: 4, groups: 2, room: 5, counts: [0, 1, 1] },
      { mass: 5, groups: 3, room: 6, counts: [0, 2, 1] },
    ]);
  });

  it('takes more of the heaviest kind where nothing else differs, in whatever order they come', () => {
    const [two, three, four] = [2, 3, 4].map((size) => ({ mass: size, room: 1, groups: 2 }));
    if (!two || !three || !four) throw new Error('no kinds');
    // 6 is 4 + 2 or 3 + 3, the sixth sum after 0, 2, 3, 4 and 5
    for (const [kinds, counts] of [
      [
        [two, three, four],
        [1, 0, 1],
      ],
      [
        [four, three, two],
        [1, 0, 1],
      ],
      [
        [three, four, two],
        [0, 1, 1],
      ],
      [
        [four, two, three],
        [1, 1, 0],
      ],
    ] as const) {
      expect(groupSums(kinds)?.countsAt(5)).toEqual(counts);
    }
  });

  it('makes nothing of nothing', () => {
    expect(written(groupSums([]), [])).toEqual([{ mass: 0, groups: 0, room: 0, counts: [] }]);
  });

  it('takes the thinner of two kinds that weigh the same', () => {
    const [thick, thin] = [
      { mass: 5, room: 9, groups: 1 },
      { mass: 5, room: 2, groups: 1 },
    ];
    expect(groupSums([thick, thin])?.countsAt(1)).toEqual([0, 1]);
    expect(groupSums([thin, thick])?.countsAt(1)).toEqual([1, 0]);
  });

  it('gives 100,000 sums and no more', () => {
    // five decimal digits: nine groups each of 1, 10, 100, 1000 and 10,000 make 0 to 99,999
    const digits = [1, 10, 100, 1000, 10_000].map((size) => ({ mass: size, room: 0, groups: 9 }));
    const sums = groupSums(digits);
    expect(sums?.size).toBe(100_000);
    expect(sums?.massAt(99_999)).toBe(99_999);
    expect(sums?.groupsAt(99_999)).toBe(45);
    expect(groupSums([...digits, { mass: 100_000, room: 0, groups: 1 }])).toBeUndefined();
  });

  describe('where sums can be made in very many ways', () => {
    const sizes = [1, 3, 9, 27];
    const groups = 80;
    // 0 to 80 × (1 + 3 + 9 + 27)
    const sums = 80 * 40 + 1;

    it('keeps one way for each sum when all that there is has room', () => {
      // one of the next size for three of a size always needs fewer groups and more room
      const kinds = sizes.map((mass, index) => ({ mass, room: 10 ** index, groups }));
      expect(groupSums(kinds)?.size).toBe(sums);
      expect(groupSums(kinds, sums, groups * 1111)?.size).toBe(sums);
    });

    it('keeps no way that needs more groups and no less room when not all has room', () => {
      const flat = sizes.map((mass) => ({ mass, room: 0, groups }));
      const thick = { mass: sums, room: 10, groups: 1 };
      expect(groupSums([...flat, thick], sums, 9)?.size).toBe(sums);
    });
  });
});
