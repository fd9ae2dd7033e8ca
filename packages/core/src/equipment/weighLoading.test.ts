import { describe, expect, it } from 'vitest';
import { kg, type LoadValue, toKg, toLb } from '../load/index.ts';
import type { Equipment } from './Equipment.ts';
import type { Loading } from './Loading.ts';
import { bothEnds, ends, kgBar, plate } from './oracle/exampleGear.ts';
import { weighLoading } from './weighLoading.ts';

const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });
const named = { id: 'it', name: 'It' };

function weigh(...args: Parameters<typeof weighLoading>) {
  const weighed = weighLoading(...args);
  if (weighed.kind === 'none') throw new Error(weighed.message);
  return weighed;
}

describe('weighLoading', () => {
  it('adds kilogram and pound plates without rounding either', () => {
    // 15 + 2 × (10 + 35 × 0.45359237 + 5 × 0.45359237) = 15 + 20 + 80 × 0.45359237
    const { load } = weigh(kgBar(15), bothEnds(plate(10), plate(35, 'lb'), plate(5, 'lb')));
    expect(toKg(load)).toBe(71.2873896);
    expect(toLb(load)).toBeCloseTo(157.162, 3);
  });

  it('says how uneven a bar is: 45 lb plates on one end, 20 kg plates on the other', () => {
    const big = plate(45, 'lb');
    const one = weigh(kgBar(20), ends([plate(20)], [big]));
    // 45 lb is 20.41165665 kg
    expect(one.sides).toMatchObject({ heavier: 'right', difference: kg(0.41165665) });
    expect(toKg(one.load)).toBe(60.41165665);
    const four = weigh(kgBar(20), ends(new Array(4).fill(plate(20)), new Array(4).fill(big)));
    expect(four.sides?.difference).toBe(kg(4 * 0.41165665));
    expect(weigh(kgBar(20), bothEnds(big)).sides).toMatchObject({
      heavier: 'neither',
      difference: 0,
    });
  });

  it('halves stack and add-on at a 2:1 handle, and keeps the stack number', () => {
    const first = kilograms(5);
    const cable = { kind: 'stack', first, rest: [], pulleyRatio: 2, ...named } as const;
    const pin = { kind: 'pin', pin: kilograms(30), addOns: [kilograms(1)], pieces: 1 } as const;
    expect(weigh(cable, pin)).toMatchObject({
      shown: kg(31),
      load: kg(15.5),
      standing: 'estimate',
    });
    expect(weigh(cable, pin).notes.map(({ code }) => code)).toContain(
      'equipment.friction-not-included',
    );
  });

  it('pushes (sled + plates) × sin(angle) along the rail', () => {
    const sled = { kind: 'machine', posts: 2, start: kilograms(40), ...named } as const;
    const loaded = bothEnds(plate(20), plate(20), plate(10));
    // (40 + 100) × sin 45° = 98.9949…, × sin 35° = 80.3007…
    expect(toKg(weigh({ ...sled, railDegrees: 45 }, loaded).load)).toBeCloseTo(98.99495, 4);
    expect(toKg(weigh({ ...sled, railDegrees: 35 }, loaded).load)).toBeCloseTo(80.30069, 4);
    expect(toKg(weigh({ ...sled, leverRatio: 0.5 }, loaded).load)).toBe(70);
    expect(weigh(sled, loaded).shown).toBe(kg(100));
  });

  it('leaves an unknown guided bar unknown and counts its plates', () => {
    const guided = { kind: 'machine', posts: 2, start: 'unknown', ...named } as const;
    expect(weigh(guided, bothEnds(plate(15)))).toMatchObject({
      standing: 'relative',
      counts: 'plates',
      shown: kg(30),
    });
  });

  it('weighs by the hand: a dumbbell with its magnet, a handle with its plates', () => {
    const addOns = [kilograms(0.5)];
    const fixed: Loading = { kind: 'fixed', weight: kilograms(12), hands: 2, addOns, pieces: 4 };
    const rack = { kind: 'fixed', form: 'dumbbell', weights: [], ...named } as const;
    expect(weigh({ ...rack, weights: [{ weight: kilograms(12), pieces: 2 }] }, fixed).load).toBe(
      kg(12.5),
    );
    const handles = { kind: 'handles', handle: kilograms(2), handles: 2, ...named } as const;
    const places = [
      'first-handle-left',
      'first-handle-right',
      'second-handle-left',
      'second-handle-right',
    ] as const;
    const stacks = places.map((place) => ({ place, plates: [plate(5)] }));
    expect(weigh(handles, { kind: 'plates', stacks, pieces: 4 }).load).toBe(kg(12));
  });

  it('takes help off the body weight and refuses help that leaves nothing', () => {
    const station = { kind: 'body', ...named } as const;
    const help = (value: number): Loading => ({
      kind: 'assistance',
      added: kilograms(-value),
      pieces: 0,
    });
    expect(weigh(station, help(30), { bodyWeight: kilograms(78) })).toMatchObject({
      load: kg(48),
      shown: kg(-30),
    });
    expect(weighLoading(station, help(95), { bodyWeight: kilograms(90) })).toMatchObject({
      kind: 'none',
      reason: 'assistance-over-body-weight',
    });
  });

  it('refuses help that leaves nothing in the lightest position, as the list of loads does', () => {
    const station = { kind: 'body', ...named } as const;
    const push = { bodyWeight: kilograms(80), movedShare: { low: 0.6, high: 0.7 } };
    const help = (value: number): Loading => ({
      kind: 'assistance',
      added: kilograms(-value),
      pieces: 0,
    });
    // 60 to 70 % of 80 kg are 48 to 56 kg, half way 52
    expect(weigh(station, help(47), push)).toMatchObject({
      load: kg(5),
      range: { low: kg(1), high: kg(9) },
    });
    expect(weighLoading(station, help(48), push).kind).toBe('none');
    expect(weighLoading(station, help(50), push).kind).toBe('none');
  });

  it('weighs nothing on an unknown machine as nothing, not as refused help', () => {
    const guided = { kind: 'machine', posts: 2, start: 'unknown', ...named } as const;
    expect(weigh(guided, bothEnds()).load).toBe(0);
  });

  it('counts every plate of one post once', () => {
    const stacks = [{ place: 'post', plates: [plate(10), plate(5)] }] as const;
    const loading: Loading = { kind: 'plates', stacks, pieces: 2 };
    const pin = { kind: 'one-post', form: 'belt', base: kilograms(2), ...named } as const;
    expect(weigh(pin, loading).load).toBe(kg(17));
    expect(weigh(pin, loading)).not.toHaveProperty('sides');
    const press = { kind: 'machine', posts: 1, start: kilograms(3), ...named } as const;
    expect(weigh(press, loading)).toMatchObject({ load: kg(18), shown: kg(15) });
  });

  it('says which end is the heavier one', () => {
    expect(weigh(kgBar(20), ends([plate(10), plate(5)], [plate(10)])).sides).toEqual({
      ...{ left: kg(15), right: kg(10) },
      ...{ difference: kg(5), heavier: 'left' },
    });
  });

  it('takes for each kind of equipment its own loadings and no others', () => {
    const pieces = 0;
    const loadings: Readonly<Record<string, Loading>> = {
      bar: bothEnds(),
      post: { kind: 'plates', stacks: [{ place: 'post', plates: [] }], pieces },
      belt: { kind: 'plates', stacks: [{ place: 'belt', plates: [] }], pieces },
      alone: { kind: 'plates', stacks: [], pieces },
      fixed: { kind: 'fixed', weight: kilograms(10), hands: 2, addOns: [], pieces },
      pin: { kind: 'pin', pin: kilograms(10), addOns: [], pieces },
      help: { kind: 'assistance', added: kilograms(-10), pieces },
    };
    const own = (equipment: Equipment) =>
      Object.entries(loadings).flatMap(([name, loading]) => {
        try {
          weighLoading(equipment, loading, { bodyWeight: kilograms(80) });
          return [name];
        } catch (error) {
          expect(String(error)).toMatch(/RangeError: weighLoading: .* cannot have a loading of/);
          return [];
        }
      });
    const base = kilograms(5);
    expect(own(kgBar(20))).toEqual(['bar']);
    expect(own({ kind: 'one-post', form: 'belt', base, ...named })).toEqual(['post']);
    expect(own({ kind: 'machine', posts: 2, start: base, ...named })).toEqual(['bar']);
    expect(own({ kind: 'machine', posts: 1, start: base, ...named })).toEqual(['post']);
    expect(own({ kind: 'handles', handle: base, handles: 2, ...named })).toEqual([]);
    expect(own({ kind: 'body', ...named })).toEqual(['alone', 'help']);
    expect(own({ kind: 'body', belt: {}, ...named })).toEqual(['belt', 'alone', 'help']);
    const weights = [{ weight: kilograms(10), pieces: 2 }];
    expect(own({ kind: 'fixed', form: 'dumbbell', weights, ...named })).toEqual(['fixed']);
    expect(own({ kind: 'stack', first: base, rest: [], pulleyRatio: 1, ...named })).toEqual([
      'pin',
    ]);
  });

  it('finds the belt among the ways to train with the body', () => {
    const belt = { base: kilograms(1) };
    const station = { kind: 'body', belt, assistance: [kilograms(20)], ...named } as const;
    const stacks = [{ place: 'belt', plates: [plate(10)] }] as const;
    const loading: Loading = { kind: 'plates', stacks, pieces: 1 };
    // 80 + 1 + 10
    expect(weigh(station, loading, { bodyWeight: kilograms(80) })).toMatchObject({
      kind: 'weighed',
      load: kg(91),
      shown: kg(11),
    });
  });

  it('passes on why nothing can be weighed', () => {
    const band = { kind: 'band', ...named } as const;
    expect(weighLoading(band, bothEnds())).toMatchObject({
      kind: 'none',
      reason: 'resistance-unknown',
    });
  });

  it('refuses loadings that the equipment cannot have', () => {
    const pin: Loading = { kind: 'pin', pin: kilograms(5), addOns: [], pieces: 0 };
    expect(() => weighLoading(kgBar(20), pin)).toThrow(/barbell cannot have a loading of pin$/);
    const post: Loading = { kind: 'plates', stacks: [{ place: 'post', plates: [] }], pieces: 0 };
    expect(() => weighLoading(kgBar(20), post)).toThrow(/loading of plates post$/);
  });
});
