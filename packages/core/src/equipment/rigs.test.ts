import { describe, expect, it } from 'vitest';
import { kg, type LoadValue, toKg } from '../load/index.ts';
import type { Equipment, EquipmentUse } from './Equipment.ts';
import type { LoadList } from './Loading.ts';
import { kgBar, kgPlates, plate } from './oracle/exampleGear.ts';
import { reachableLoads } from './reachableLoads.ts';
import { rigFor } from './rigFor.ts';

const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });
const named = { id: 'it', name: 'It' };
const list = (equipment: Equipment, use: EquipmentUse = {}): LoadList => {
  const answer = reachableLoads(equipment, use);
  if (answer.kind === 'none') throw new Error(answer.reason);
  return answer;
};
const inKg = ({ loads }: LoadList) => loads.map(({ load }) => toKg(load));
const codes = ({ notes }: LoadList) => notes.map(({ code }) => code);
const tens = { plates: kgPlates([10], 4) };

describe('what each kind of equipment counts and how sure it is', () => {
  const machine = { kind: 'machine', posts: 2, start: kilograms(20), ...named } as const;
  const rack = { weights: [{ weight: kilograms(20), pieces: 2 }], ...named } as const;
  const base = kilograms(10);
  const friction = 'equipment.friction-not-included';
  const notFree = 'equipment.not-the-free-lift';

  it.each<[Equipment, string, string, readonly string[]]>([
    [kgBar(20), 'total', 'exact', []],
    [{ kind: 'fixed', form: 'barbell', ...rack }, 'total', 'exact', []],
    [{ kind: 'fixed', form: 'dumbbell', ...rack }, 'each-hand', 'exact', []],
    [{ kind: 'fixed', form: 'kettlebell', ...rack }, 'each-hand', 'exact', []],
    [{ kind: 'handles', handle: base, handles: 2, ...named }, 'each-hand', 'exact', []],
    [{ kind: 'one-post', form: 'loading-pin', base, ...named }, 'total', 'exact', []],
    [
      { kind: 'one-post', form: 'landmine', base, ...named },
      'total',
      'estimate',
      ['equipment.landmine-angle'],
    ],
    [
      { kind: 'stack', first: base, rest: [], pulleyRatio: 1, ...named },
      'stack',
      'estimate',
      [friction],
    ],
    [machine, 'plates', 'estimate', [friction, notFree]],
    [
      { ...machine, start: 'unknown' },
      'plates',
      'relative',
      ['equipment.start-unknown', friction, notFree],
    ],
    [{ kind: 'body', ...named }, 'added', 'exact', []],
  ])('%j', (equipment, counts, standing, notes) => {
    const use = { bodyWeight: kilograms(80) };
    expect(rigFor(equipment, use).kind).toBe('rig');
    const answer = list(equipment, use);
    expect(answer).toMatchObject({ kind: 'loads', counts, standing });
    expect(codes(answer)).toEqual(notes);
  });

  it('shows the load itself wherever it is counted in total or by the hand', () => {
    const post = { kind: 'one-post', form: 'belt', base, ...named } as const;
    for (const equipment of [
      kgBar(20),
      post,
      { kind: 'fixed', form: 'dumbbell', ...rack },
      { kind: 'handles', handle: base, handles: 2, ...named },
    ] as const) {
      const { loads } = list(equipment, tens);
      expect(loads.map(({ shown }) => shown)).toEqual(loads.map(({ load }) => load));
    }
  });
});

describe('how loadings are written', () => {
  const places = (equipment: Equipment, use: EquipmentUse) => {
    const { loading } = list(equipment, use).loads.at(-1) ?? {};
    if (loading?.kind !== 'plates') throw new Error('no plates');
    return [loading.stacks.map(({ place }) => place), loading.pieces];
  };

  it('names every place that gets plates', () => {
    const machine = { kind: 'machine', start: 'unknown', ...named } as const;
    expect(places({ ...machine, posts: 1 }, tens)).toEqual([['post'], 4]);
    expect(places({ ...machine, posts: 2 }, tens)).toEqual([['left', 'right'], 4]);
    const pin = { kind: 'one-post', form: 'belt', base: kilograms(1), ...named } as const;
    expect(places(pin, tens)).toEqual([['post'], 4]);
    const handles = { kind: 'handles', handle: kilograms(2), handles: 2, ...named } as const;
    expect(places(handles, { ...tens, hands: 1 })).toEqual([
      ['first-handle-left', 'first-handle-right'],
      4,
    ]);
    expect(places(handles, tens)[0]).toHaveLength(4);
    const station = { kind: 'body', belt: {}, ...named } as const;
    expect(places(station, { ...tens, bodyWeight: kilograms(80) })).toEqual([['belt'], 4]);
  });

  it('puts plates of its own before those of the gym', () => {
    const own = { plates: kgPlates([1], 2) };
    expect(inKg(list({ ...kgBar(20), ...own }, tens))).toEqual([20, 22]);
    const pin = { kind: 'one-post', form: 'belt', base: kilograms(1), ...named, ...own } as const;
    expect(inKg(list(pin, tens))).toEqual([1, 2, 3]);
    const handles = {
      kind: 'handles',
      handle: kilograms(2),
      handles: 1,
      ...named,
      ...own,
    } as const;
    expect(inKg(list(handles, { ...tens, hands: 1 }))).toEqual([2, 4]);
    const machine = { kind: 'machine', posts: 1, start: kilograms(5), ...named, ...own } as const;
    expect(inKg(list(machine, tens))).toEqual([5, 6, 7]);
    const station = { kind: 'body', belt: own, ...named } as const;
    expect(inKg(list(station, { ...tens, bodyWeight: kilograms(80) }))).toEqual([80, 81, 82]);
  });

  it('keeps to the sleeve on everything that has one', () => {
    const thick = { plates: [{ ...plate(10), pieces: 4, thicknessMm: 25.4 }] };
    const sleeveMm = 25.4;
    expect(inKg(list({ ...kgBar(20), sleeveMm }, thick))).toEqual([20, 40]);
    expect(inKg(list({ ...kgBar(20), sleeveMm: 25.3 }, thick))).toEqual([20]);
    const pin = { kind: 'one-post', form: 'belt', base: kilograms(1), ...named } as const;
    expect(inKg(list({ ...pin, sleeveMm }, thick))).toEqual([1, 11]);
    const handles = { kind: 'handles', handle: kilograms(2), handles: 1, ...named } as const;
    expect(inKg(list({ ...handles, sleeveMm }, { ...thick, hands: 1 }))).toEqual([2, 22]);
    const machine = { kind: 'machine', posts: 2, start: kilograms(5), ...named } as const;
    expect(inKg(list({ ...machine, sleeveMm }, thick))).toEqual([5, 25]);
  });

  it('takes a bar in one piece in both hands, whatever is asked', () => {
    const bars = {
      kind: 'fixed',
      form: 'barbell',
      ...named,
      weights: [{ weight: kilograms(20), pieces: 1 }],
    } as const;
    expect(list(bars, { hands: 2 }).loads[0].loading).toMatchObject({ hands: 1, pieces: 1 });
  });

  it('counts add-ons with the weights that carry them: four pieces for two in each hand', () => {
    const rack = {
      kind: 'fixed',
      form: 'dumbbell',
      ...named,
      weights: [{ weight: kilograms(10), pieces: 2 }],
      addOns: [{ weight: kilograms(0.5), pieces: 3 }],
    } as const;
    expect(list(rack).loads.map(({ load, loading }) => [toKg(load), loading.pieces])).toEqual([
      [10, 2],
      [10.5, 4],
    ]);
    expect(list(rack).loads[1]?.loading).toEqual({
      kind: 'fixed',
      weight: kilograms(10),
      hands: 2,
      addOns: [kilograms(0.5)],
      pieces: 4,
    });
  });
});

describe('a body with help', () => {
  const helped = (...weights: readonly number[]) =>
    ({ kind: 'body', assistance: weights.map(kilograms), ...named }) as const;
  const use = { bodyWeight: kilograms(80) };

  it('leaves out help of the whole weight and says so, and only then', () => {
    expect(inKg(list(helped(79, 80), use))).toEqual([1, 80]);
    expect(codes(list(helped(79, 80), use))).toEqual(['equipment.assistance-over-body-weight']);
    expect(codes(list(helped(79), use))).toEqual([]);
  });

  it('goes by the least that is moved where the share changes', () => {
    // 60 % of 80 kg is 48 kg, half way to 70 % is 52 kg
    const push = { ...use, movedShare: { low: 0.6, high: 0.7 } };
    const answer = list(helped(47, 48), push);
    expect(inKg(answer)).toEqual([5, 52]);
    expect(answer.loads[0].range).toEqual({ low: kg(1), high: kg(9) });
    expect(codes(answer)).toEqual([
      'equipment.supported-share',
      'equipment.assistance-over-body-weight',
    ]);
  });

  it('has no range and no guess where the share is one figure', () => {
    const answer = list(helped(), { ...use, movedShare: { low: 0.5, high: 0.5 } });
    expect(answer).toMatchObject({ standing: 'exact', notes: [] });
    expect(answer.loads).toMatchObject([{ load: kg(40) }]);
    expect(answer.loads[0].range).toBeUndefined();
  });

  it('hangs a belt of known weight, with plates and with pieces', () => {
    const belt = {
      base: kilograms(1),
      pieces: [{ weight: kilograms(4), pieces: 1 }],
      plates: kgPlates([2], 1),
    };
    // the belt with nothing on is 1 kg
    expect(inKg(list({ kind: 'body', belt, ...named }, use))).toEqual([80, 81, 83, 85, 87]);
  });
});

describe('numbers at their limits', () => {
  const stack = { kind: 'stack', first: kilograms(5), rest: [], ...named } as const;
  const sled = { kind: 'machine', posts: 1, start: kilograms(10), ...named } as const;
  const station = { kind: 'body', ...named } as const;
  const body = (low: number, high: number) =>
    reachableLoads(station, { bodyWeight: kilograms(80), movedShare: { low, high } });
  const bar = (thicknessMm: number, sleeveMm: number) =>
    reachableLoads(
      { ...kgBar(20), sleeveMm },
      { plates: [{ ...plate(5), pieces: 2, thicknessMm }] },
    );
  const pieces = (count: number) => reachableLoads(kgBar(20), { plates: kgPlates([5], count) });

  it.each<[string, (value: number) => unknown, number, number]>([
    ['pulleyRatio', (pulleyRatio) => reachableLoads({ ...stack, pulleyRatio }), 0.1, 10],
    ['railDegrees', (railDegrees) => reachableLoads({ ...sled, railDegrees }), 1, 90],
    ['leverRatio', (leverRatio) => reachableLoads({ ...sled, leverRatio }), 0.01, 10],
    ['movedShare.high', (high) => body(0.01, high), 0.01, 1],
    ['movedShare.low', (low) => body(low, 0.7), 0.01, 0.7],
    ['length in mm', (value) => bar(value, 10_000), 0, 10_000],
    ['length in mm', (value) => bar(0, value), 0, 10_000],
    ['pieces', pieces, 0, 1000],
  ])('%s', (name, make, least, most) => {
    expect(() => make(least)).not.toThrow();
    expect(() => make(most)).not.toThrow();
    const message = new RegExp(`equipment: ${name}`);
    for (const wrong of [least - 0.001, most + 0.001, Number.NaN]) {
      expect(() => make(wrong)).toThrow(message);
    }
  });

  it('refuses what weighs nothing or helps with nothing', () => {
    expect(() => reachableLoads(kgBar(20), { plates: kgPlates([0], 2) })).toThrow(
      /equipment: a piece/,
    );
    const helped = { ...station, assistance: [kilograms(0)] };
    expect(() => reachableLoads(helped, { bodyWeight: kilograms(80) })).toThrow(/assistance/);
    expect(() => reachableLoads(station, { bodyWeight: kilograms(0) })).toThrow(
      /^equipment: bodyWeight/,
    );
    expect(() => pieces(2.5)).toThrow(/equipment: pieces/);
    const halved = { kind: 'fixed', form: 'kettlebell', ...named } as const;
    const weights = [{ weight: kilograms(8), pieces: 1.5 }];
    expect(() => reachableLoads({ ...halved, weights })).toThrow(/equipment: pieces/);
  });
});
