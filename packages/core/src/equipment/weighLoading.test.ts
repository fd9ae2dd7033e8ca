import { describe, expect, it } from 'vitest';
import { kg, type LoadValue, toKg, toLb } from '../load/index.ts';
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

  it('refuses loadings that the equipment cannot have', () => {
    const pin: Loading = { kind: 'pin', pin: kilograms(5), addOns: [], pieces: 0 };
    expect(() => weighLoading(kgBar(20), pin)).toThrow(/barbell cannot have/);
    const post: Loading = { kind: 'plates', stacks: [{ place: 'post', plates: [] }], pieces: 0 };
    expect(() => weighLoading(kgBar(20), post)).toThrow(/post/);
  });
});
