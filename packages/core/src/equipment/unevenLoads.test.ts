import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, type Load, loadFromValue, toKg } from '../load/index.ts';
import type { Barbell, PlateStock } from './Equipment.ts';
import type { PlateLoading } from './Loading.ts';
import { kgBar, kgPlates, plate } from './oracle/exampleGear.ts';
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
    expect(() => unevenLoads(kgBar(20), use, kg(-1))).toThrow(RangeError);
  });
});
