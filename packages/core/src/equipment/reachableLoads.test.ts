import { describe, expect, it } from 'vitest';
import { kg, type LoadValue, toKg } from '../load/index.ts';
import type { Equipment, EquipmentUse } from './Equipment.ts';
import type { ReachableLoad } from './Loading.ts';
import { bothEnds, kgBar, kgPlates, plate } from './oracle/exampleGear.ts';
import { reachableLoads } from './reachableLoads.ts';

function loadsOf(equipment: Equipment, use: EquipmentUse = {}): readonly ReachableLoad[] {
  const answer = reachableLoads(equipment, use);
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer.loads;
}

const inKg = (loads: readonly ReachableLoad[]) => loads.map(({ load }) => toKg(load));
const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });
const named = { id: 'it', name: 'It' };

describe('reachableLoads on a bar', () => {
  it('goes in steps of twice the smallest plate: 2.5 kg plates give 20, 25, 30 …', () => {
    const loads = inKg(loadsOf(kgBar(20), { plates: kgPlates([10, 5, 2.5], 2) }));
    expect(loads).toEqual([20, 25, 30, 35, 40, 45, 50, 55]);
  });

  it('counts what is owned: one pair each of 15, 10, 5, 2.5 and 1.25 ends at 87.5', () => {
    const loads = inKg(loadsOf(kgBar(20), { plates: kgPlates([15, 10, 5, 2.5, 1.25], 2) }));
    expect(loads[0]).toBe(20);
    expect(loads.at(-1)).toBe(87.5);
  });

  it('counts collars on both ends when they weigh something', () => {
    const bar = { ...kgBar(20), collar: kilograms(2.5) };
    expect(inKg(loadsOf(bar, { plates: kgPlates([20], 2) }))).toEqual([25, 65]);
  });

  it('loads 15 + 1.25 on each end for 47.5 with the 15 kg bar: two plates, not three', () => {
    const loads = loadsOf(kgBar(15), { plates: kgPlates([20, 15, 10, 5, 2.5, 1.25], 8) });
    const wanted = loads.find(({ load }) => load === kg(47.5));
    expect(wanted?.loading).toEqual(bothEnds(plate(15), plate(1.25)));
  });

  it('loads 35 + 35 + 10 + 2.5 lb on each end of a 60 lb trap bar for 225 lb without a 45', () => {
    const stock = [35, 10, 5, 2.5].map((value) => ({ ...plate(value, 'lb'), pieces: 4 }));
    const loads = loadsOf({ ...kgBar(20), bar: { value: 60, unit: 'lb' } }, { plates: stock });
    const wanted = loads.find(({ load }) => load === 225 * 45_359_237_000);
    // (225 − 60) / 2 = 82.5 = 35 + 35 + 10 + 2.5, and no three of these make it
    expect(wanted?.loading).toEqual(
      bothEnds(plate(35, 'lb'), plate(35, 'lb'), plate(10, 'lb'), plate(2.5, 'lb')),
    );
  });

  it('takes the larger plate first where as many pieces would do: 20 + 10, not 15 + 15', () => {
    const loads = loadsOf(kgBar(20), { plates: kgPlates([10, 15, 20], 4) });
    const wanted = loads.find(({ load }) => load === kg(80));
    expect(wanted?.loading).toEqual(bothEnds(plate(20), plate(10)));
  });

  it('takes more pieces where only they fit on the sleeve', () => {
    const plates = [
      { ...plate(20), pieces: 2, thicknessMm: 60 },
      { ...plate(10), pieces: 4, thicknessMm: 25 },
    ];
    const loads = loadsOf({ ...kgBar(20), sleeveMm: 55 }, { plates });
    // 60 kg is 20 a side: one thick plate does not fit on 55 mm, two thin ones take 50 mm
    expect(inKg(loads)).toEqual([20, 40, 60]);
    expect(loads[2]?.loading.pieces).toBe(4);
  });

  it('leaves odd pieces on the rack', () => {
    expect(inKg(loadsOf(kgBar(20), { plates: kgPlates([10], 3) }))).toEqual([20, 40]);
  });

  it('is the bar alone without plates', () => {
    expect(inKg(loadsOf(kgBar(20)))).toEqual([20]);
    expect(inKg(loadsOf(kgBar(20), { plates: kgPlates([10], 0) }))).toEqual([20]);
  });
});

describe('reachableLoads on other equipment', () => {
  const rack = {
    kind: 'fixed',
    form: 'dumbbell',
    weights: [
      { weight: kilograms(10), pieces: 2 },
      { weight: kilograms(12.5), pieces: 1 },
      { weight: kilograms(17.5), pieces: 2 },
    ],
    ...named,
  } as const;

  it('counts dumbbells by the hand and skips the weight whose partner is missing', () => {
    expect(inKg(loadsOf(rack))).toEqual([10, 17.5]);
    expect(inKg(loadsOf(rack, { hands: 1 }))).toEqual([10, 12.5, 17.5]);
    expect(reachableLoads(rack)).toMatchObject({ counts: 'each-hand', standing: 'exact' });
  });

  it('has no pair where every weight is single, and no handle for the second hand', () => {
    const single = { ...rack, weights: [{ weight: kilograms(8), pieces: 1 }] };
    expect(reachableLoads(single)).toMatchObject({ kind: 'none', reason: 'no-pair' });
    const handle = { kind: 'handles', handle: kilograms(2), handles: 1, ...named } as const;
    expect(reachableLoads(handle)).toMatchObject({ kind: 'none', reason: 'no-pair' });
    expect(inKg(loadsOf(handle, { hands: 1 }))).toEqual([2]);
  });

  it('says that an empty rack is empty', () => {
    const answer = reachableLoads({ ...rack, weights: [] });
    expect(answer).toMatchObject({ kind: 'none', reason: 'nothing-in-stock' });
    const lent = { ...rack, weights: [{ weight: kilograms(10), pieces: 0 }] };
    expect(reachableLoads(lent)).toMatchObject({ kind: 'none', reason: 'nothing-in-stock' });
  });

  it('shows the stack number and gives half of it at the handle of a 2:1 pulley', () => {
    const row = {
      kind: 'stack',
      first: kilograms(5),
      rest: [
        { weight: kilograms(5), pieces: 1 },
        { weight: kilograms(7.5), pieces: 1 },
      ],
      addOns: [{ weight: { value: 2.5, unit: 'lb' }, pieces: 1 }],
      pulleyRatio: 2,
      ...named,
    } as const;
    const loads = loadsOf(row);
    // stack 5, 10, 17.5, each with and without 2.5 lb = 1.133980925 kg
    expect(loads.map(({ shown }) => toKg(shown))).toEqual([
      5, 6.133980925, 10, 11.133980925, 17.5, 18.633980925,
    ]);
    expect(toKg(loads[1]?.load ?? kg(0))).toBe(3.0669904625);
    expect(loads[1]?.loading).toEqual({
      kind: 'pin',
      pin: kilograms(5),
      addOns: [{ value: 2.5, unit: 'lb' }],
      pieces: 1,
    });
    expect(reachableLoads(row)).toMatchObject({ counts: 'stack', standing: 'estimate' });
  });

  it('takes sin 30° of sled and plates along the rail, exactly half', () => {
    const sled = {
      kind: 'machine',
      posts: 2,
      start: kilograms(47),
      railDegrees: 30,
      ...named,
    } as const;
    const loads = loadsOf(sled, { plates: kgPlates([20], 4) });
    expect(inKg(loads)).toEqual([23.5, 43.5, 63.5]);
    expect(loads.map(({ shown }) => toKg(shown))).toEqual([0, 40, 80]);
  });

  it('keeps an unknown starting resistance unknown: plates only, and says so', () => {
    const guided = { kind: 'machine', posts: 2, start: 'unknown', ...named } as const;
    const answer = reachableLoads(guided, { plates: kgPlates([20], 2) });
    expect(answer).toMatchObject({ counts: 'plates', standing: 'relative' });
    expect(answer.kind === 'loads' && answer.notes.map(({ code }) => code)).toContain(
      'equipment.start-unknown',
    );
  });

  it('adds the belt to the body and takes help off, and leaves out help of body weight', () => {
    const station = {
      kind: 'body',
      belt: {},
      assistance: [kilograms(20), kilograms(70)],
      ...named,
    } as const;
    const use = { bodyWeight: kilograms(68), plates: kgPlates([10], 1) };
    const loads = loadsOf(station, use);
    expect(inKg(loads)).toEqual([48, 68, 78]);
    expect(loads[0]?.loading).toEqual({ kind: 'assistance', added: kilograms(-20), pieces: 0 });
    expect(loads.map(({ shown }) => toKg(shown))).toEqual([-20, 0, 10]);
    const answer = reachableLoads(station, use);
    expect(answer.kind === 'loads' && answer.notes.map(({ code }) => code)).toContain(
      'equipment.assistance-over-body-weight',
    );
  });

  it('gives a range where the moved share of the body is one', () => {
    const floor = { kind: 'body', ...named } as const;
    const use = { bodyWeight: kilograms(80), movedShare: { low: 0.6, high: 0.7 } };
    expect(loadsOf(floor, use)).toMatchObject([
      { load: kg(52), shown: kg(0), range: { low: kg(48), high: kg(56) } },
    ]);
    expect(reachableLoads(floor, use)).toMatchObject({ standing: 'estimate' });
  });

  it('asks for the body weight, and knows that a band is not known', () => {
    expect(reachableLoads({ kind: 'body', ...named })).toMatchObject({
      reason: 'body-weight-not-given',
    });
    expect(reachableLoads({ kind: 'band', ...named })).toMatchObject({
      reason: 'resistance-unknown',
    });
  });

  it('says that a landmine is an estimate', () => {
    const base = kilograms(10);
    const landmine = { kind: 'one-post', form: 'landmine', base, ...named } as const;
    expect(reachableLoads(landmine, { plates: kgPlates([5], 3) })).toMatchObject({
      standing: 'estimate',
      loads: [{ load: kg(10) }, { load: kg(15) }, { load: kg(20) }, { load: kg(25) }],
    });
  });
});

describe('reachableLoads with input that cannot be', () => {
  it('names an empty range', () => {
    expect(reachableLoads(kgBar(20), {}, { lightest: kg(21) })).toMatchObject({
      kind: 'none',
      reason: 'nothing-in-range',
    });
    expect(reachableLoads(kgBar(20), {}, { heaviest: kg(19) })).toMatchObject({
      reason: 'nothing-in-range',
    });
  });

  it('stops at 100,000 loads instead of filling the memory', () => {
    const weights = Array.from({ length: 17 }, (_, index) => 0.001 * 2 ** index);
    const answer = reachableLoads(kgBar(20), { plates: kgPlates(weights, 2) });
    expect(answer).toMatchObject({ kind: 'none', reason: 'too-many-loads' });
    const near = reachableLoads(kgBar(20), { plates: kgPlates(weights, 2) }, { heaviest: kg(21) });
    expect(near.kind === 'loads' && near.loads.length).toBe(501);
  });

  it.each([
    ['NaN', kgPlates([Number.NaN], 2)],
    ['nothing', kgPlates([0], 2)],
    ['less than nothing', kgPlates([-5], 2)],
    ['a thousand tons', kgPlates([1e6], 2)],
    ['half a piece', kgPlates([5], 2.5)],
    ['-1 pieces', kgPlates([5], -1)],
    ['a million pieces', kgPlates([5], 1e6)],
    ['a thickness of NaN', [{ ...plate(5), pieces: 2, thicknessMm: Number.NaN }]],
  ])('refuses a plate of %s', (_, plates) => {
    expect(() => reachableLoads(kgBar(20), { plates })).toThrow(RangeError);
  });

  it('refuses ratios, angles and shares out of range', () => {
    const stack = {
      kind: 'stack',
      first: kilograms(5),
      rest: [],
      pulleyRatio: 0,
      ...named,
    } as const;
    expect(() => reachableLoads(stack)).toThrow(/pulleyRatio/);
    const sled = { kind: 'machine', posts: 1, start: 'unknown', railDegrees: 0, ...named } as const;
    expect(() => reachableLoads(sled)).toThrow(/railDegrees/);
    const use = { bodyWeight: kilograms(80), movedShare: { low: 0.8, high: 0.7 } };
    expect(() => reachableLoads({ kind: 'body', ...named }, use)).toThrow(/movedShare/);
    const helped = { kind: 'body', assistance: [kilograms(-5)], ...named } as const;
    expect(() => reachableLoads(helped, use)).toThrow(RangeError);
  });
});
