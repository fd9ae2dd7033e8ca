import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, type Load, loadFromValue, toKg } from '../load/index.ts';
import type { Barbell, PlateStock } from './Equipment.ts';
import type { PlateLoading } from './Loading.ts';
import { bothEnds, ends, kgBar, kgPlates, plate } from './oracle/exampleGear.ts';
import { unevenLoads } from './unevenLoads.ts';
import { weighLoading } from './weighLoading.ts';

function loadsOf(...args: Parameters<typeof unevenLoads>) {
  const answer = unevenLoads(...args);
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer.loads;
}

interface Found {
  readonly load: number;
  readonly pieces: number;
  readonly sideDifference: number;
}

/** Every piece left, right or on the rack, tried one by one. */
function tryAll(bar: Barbell, stock: readonly PlateStock[], most: Load): readonly Found[] {
  const best = new Map<number, Found>();
  const limit = Math.round((bar.sleeveMm ?? 1e6) * 1000);
  const pieces = stock.flatMap((kind) => new Array<PlateStock>(kind.pieces).fill(kind));
  for (let pattern = 0; pattern < 3 ** pieces.length; pattern += 1) {
    const ends = [0, 0, 0];
    const room = [0, 0, 0];
    let used = 0;
    for (const [index, { weight, thicknessMm = 0 }] of pieces.entries()) {
      const end = Math.floor(pattern / 3 ** index) % 3;
      ends[end] = (ends[end] ?? 0) + loadFromValue(weight);
      room[end] = (room[end] ?? 0) + Math.round(thicknessMm * 1000);
      if (end > 0) used += 1;
    }
    const [left = 0, right = 0] = ends.slice(1);
    const sideDifference = Math.abs(left - right);
    if (sideDifference > most || Math.max(...room.slice(1)) > limit) continue;
    const load = loadFromValue(bar.bar) + left + right;
    const known = best.get(load);
    const better =
      known === undefined ||
      used < known.pieces ||
      (used === known.pieces && sideDifference < known.sideDifference);
    if (better) best.set(load, { load, pieces: used, sideDifference });
  }
  return [...best.values()].sort((a, b) => a.load - b.load);
}

describe('unevenLoads', () => {
  it('uses an odd piece and says how uneven the bar then is', () => {
    const loads = loadsOf(kgBar(20), { plates: kgPlates([5], 3) }, kg(5));
    expect(loads.map(({ load, sideDifference }) => [toKg(load), toKg(sideDifference)])).toEqual([
      [20, 0],
      [25, 5],
      [30, 0],
      [35, 5],
    ]);
  });

  it('balances 20 on one end with 10 + 10 on the other when no difference is allowed', () => {
    const plates = [
      { ...plate(20), pieces: 1 },
      { ...plate(10), pieces: 2 },
    ];
    const loads = loadsOf(kgBar(20), { plates }, kg(0));
    expect(loads.map(({ load }) => toKg(load))).toEqual([20, 40, 60]);
  });

  it('is the bar alone without plates', () => {
    expect(unevenLoads(kgBar(20), {}, kg(5))).toMatchObject({
      kind: 'loads',
      loads: [{ load: kg(20), shown: kg(20), loading: bothEnds(), sideDifference: 0 }],
    });
  });

  describe('with one thick 20 and two thin 10, and 60 mm of sleeve', () => {
    const thick = { ...plate(20), thicknessMm: 50 };
    const thin = { ...plate(10), thicknessMm: 10 };
    const five = { ...plate(5), thicknessMm: 30 };
    const bar = { ...kgBar(20), sleeveMm: 60 };
    const pieces = [
      { ...thick, pieces: 1 },
      { ...thin, pieces: 2 },
    ];
    const at = (value: number, plates: readonly PlateStock[], most: number) =>
      loadsOf(bar, { plates }, kg(most)).find(({ load }) => load === kg(value))?.loading;

    it('takes the one plate where it fits', () => {
      expect(at(40, pieces, 20)).toEqual(ends([thick], []));
    });

    it('takes the two where only they leave room for more on the heavier end', () => {
      const full = { ...plate(15), thicknessMm: 60 };
      const four = { ...plate(4), thicknessMm: 30 };
      const plates = [...pieces, { ...full, pieces: 1 }, { ...four, pieces: 1 }];
      // 15 + 20 + 4 = 39; the 15 fills its end, and 50 + 30 is too much, 10 + 10 + 30 is not
      expect(at(59, plates, 9)).toEqual(ends([thin, thin, four], [full]));
      expect(at(59, plates, 8)).toBeUndefined();
    });

    it('takes the two where only they leave room for more on the lighter end', () => {
      const heavy = { ...plate(25), thicknessMm: 60 };
      const plates = [{ ...heavy, pieces: 1 }, ...pieces, { ...five, pieces: 1 }];
      // 25 against 20 + 5
      expect(at(70, plates, 0)).toEqual(ends([heavy], [thin, thin, five]));
    });

    it('adds to the end with room where both weigh the same', () => {
      const plates = [...pieces, { ...five, pieces: 1 }];
      expect(at(65, plates, 5)).toEqual(ends([thin, thin, five], [thick]));
    });
  });

  it('lists what 100,000 ways make', () => {
    // n pieces can hang 0, 2, 4 … or 1, 3, 5 … apart: n/2 + 1 ways, rounded down, and from 498 on
    // the 250 up to 499. The counts 0 to 498 make 250 × 250 ways, each further one 250:
    // 62,500 + 150 × 250 = 100,000 with 648 pieces
    const loads = loadsOf(kgBar(20), { plates: kgPlates([1], 648) }, kg(499));
    expect(loads).toHaveLength(649);
  });

  it('keeps no way that another beats', () => {
    // 40 of one kind have 861 places, 15 of the other 136: some 117,000 arrangements
    const plates = [...kgPlates([2], 40), ...kgPlates([1], 15)];
    expect(loadsOf(kgBar(20), { plates }, kg(100))).toHaveLength(2 * 40 + 15 + 1);
  });

  it('finds what trying every arrangement finds, and writes it down rightly', () => {
    const kinds = fc.record({
      weight: fc.constantFrom(plate(20), plate(10), plate(5), plate(45, 'lb'), plate(10, 'lb')),
      pieces: fc.integer({ min: 0, max: 3 }),
      thicknessMm: fc.constantFrom(10, 25),
    });
    const stock = fc
      .array(kinds, { minLength: 1, maxLength: 3 })
      .map((all) => all.map(({ weight, ...kind }) => ({ ...weight, ...kind })))
      .filter((all) => all.reduce((sum, { pieces }) => sum + pieces, 0) <= 7);
    const most = fc.constantFrom(kg(0), kg(0.5), kg(10));
    const sleeveMm = fc.constantFrom(30, 60, 500);
    fc.assert(
      fc.property(stock, most, sleeveMm, (plates, difference, room) => {
        const bar = { ...kgBar(20), sleeveMm: room };
        const found = loadsOf(bar, { plates }, difference);
        expect(
          found.map(({ load, loading, sideDifference }) => ({
            load,
            pieces: loading.pieces,
            sideDifference,
          })),
        ).toEqual(tryAll(bar, plates, difference));
        for (const { load, loading, sideDifference } of found) {
          const weighed = weighLoading(bar, loading);
          if (weighed.kind === 'none' || weighed.sides === undefined) throw new Error('no sides');
          expect(weighed.load).toBe(load);
          expect(weighed.sides.left - weighed.sides.right).toBe(sideDifference);
          for (const { plates: stack } of (loading as PlateLoading).stacks) {
            const used = stack.reduce((sum, { thicknessMm = 0 }) => sum + thicknessMm, 0);
            expect(used).toBeLessThanOrEqual(room);
            const weights = stack.map(({ weight }) => loadFromValue(weight));
            expect(weights).toEqual(weights.toSorted((a, b) => b - a));
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('stops when there are too many ways, and refuses a negative difference', () => {
    const weights = Array.from({ length: 17 }, (_, index) => 0.001 * 2 ** index);
    const use = { plates: kgPlates(weights, 1) };
    expect(unevenLoads(kgBar(20), use, kg(500))).toMatchObject({ reason: 'too-many-loads' });
    expect(() => unevenLoads(kgBar(20), use, kg(-1))).toThrow(/^unevenLoads: mostSideDifference/);
  });
});
