import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addLoads, type Load, type LoadValue, loadFromValue, scaleLoad } from '../load/index.ts';
import type { Equipment, EquipmentUse, PieceStock } from './Equipment.ts';
import { smallStock } from './oracle/smallGyms.ts';
import { reachableLoads } from './reachableLoads.ts';

/** All sums of a stock taken `together` pieces at a time, each counting `counted` times its weight. */
function sums(stock: readonly PieceStock[], together: number, counted: number): readonly Load[] {
  return stock.reduce<readonly Load[]>(
    (found, { weight, pieces }) =>
      found.flatMap((sum) =>
        Array.from({ length: Math.floor(pieces / together) + 1 }, (_, groups) =>
          addLoads(sum, (groups * counted * loadFromValue(weight)) as Load),
        ),
      ),
    [0 as Load],
  );
}

function sorted(loads: readonly Load[]): readonly Load[] {
  return [...new Set(loads)].sort((a, b) => a - b);
}

function loadsOf(equipment: Equipment, use: EquipmentUse): readonly Load[] {
  const answer = reachableLoads(equipment, use);
  if (answer.kind === 'none') throw new Error(`${answer.reason}: ${answer.message}`);
  return answer.loads.map(({ load }) => load);
}

const named = { id: 'it', name: 'It' };
const kilograms = (value: number): LoadValue => ({ value, unit: 'kg' });

describe('the loads of each kind of equipment, against all sums written out', () => {
  it('one post: piece by piece', () => {
    fc.assert(
      fc.property(smallStock, (plates) => {
        const pin = {
          kind: 'one-post',
          form: 'loading-pin',
          base: kilograms(1.5),
          ...named,
        } as const;
        const expected = sums(plates, 1, 1).map((sum) => addLoads(sum, loadFromValue(pin.base)));
        expect(loadsOf(pin, { plates })).toEqual(sorted(expected));
      }),
    );
  });

  it('two handles take four of each plate, one takes two; the load is that of one hand', () => {
    fc.assert(
      fc.property(smallStock, fc.constantFrom(1 as const, 2 as const), (plates, hands) => {
        const handles = { kind: 'handles', handle: kilograms(2), handles: 2, ...named } as const;
        const expected = sums(plates, 2 * hands, 2).map((sum) =>
          addLoads(sum, loadFromValue(handles.handle)),
        );
        expect(loadsOf(handles, { plates, hands })).toEqual(sorted(expected));
      }),
    );
  });

  it('fixed weights: those with a piece for each hand, with add-ons for each hand', () => {
    const hands = fc.constantFrom(1 as const, 2 as const);
    fc.assert(
      fc.property(smallStock, smallStock, hands, (weights, addOns, inHands) => {
        const rack = { kind: 'fixed', form: 'dumbbell', weights, addOns, ...named } as const;
        const usable = weights.filter(({ pieces }) => pieces >= inHands);
        fc.pre(usable.length > 0);
        const expected = usable.flatMap(({ weight }) =>
          sums(addOns, inHands, 1).map((sum) => addLoads(sum, loadFromValue(weight))),
        );
        expect(loadsOf(rack, { hands: inHands })).toEqual(sorted(expected));
      }),
    );
  });

  it('a stack: every pin with every set of add-ons, divided by the pulley', () => {
    fc.assert(
      fc.property(smallStock, smallStock, fc.constantFrom(1, 2, 4), (rest, addOns, pulleyRatio) => {
        const first = kilograms(5);
        const stack = { kind: 'stack', first, rest, addOns, pulleyRatio, ...named } as const;
        const pins = [loadFromValue(first)];
        for (const { weight, pieces } of rest) {
          for (let piece = 0; piece < pieces; piece += 1) {
            pins.push(addLoads(pins.at(-1) ?? (0 as Load), loadFromValue(weight)));
          }
        }
        const expected = pins.flatMap((pin) =>
          sums(addOns, 1, 1).map((sum) => scaleLoad(addLoads(pin, sum), 1, pulleyRatio)),
        );
        expect(loadsOf(stack, {})).toEqual(sorted(expected));
      }),
    );
  });

  it('a machine with two posts: pairs, and what it starts with', () => {
    fc.assert(
      fc.property(
        smallStock,
        fc.constantFrom('unknown' as const, kilograms(53)),
        (plates, start) => {
          const machine = { kind: 'machine', posts: 2, start, ...named } as const;
          const empty = start === 'unknown' ? (0 as Load) : loadFromValue(start);
          const expected = sums(plates, 2, 2).map((sum) => addLoads(sum, empty));
          expect(loadsOf(machine, { plates })).toEqual(sorted(expected));
        },
      ),
    );
  });

  it('a body: alone, helped, or with anything that hangs on the belt', () => {
    fc.assert(
      fc.property(smallStock, smallStock, (plates, pieces) => {
        const belt = { base: kilograms(0.8), pieces };
        const assistance = [kilograms(10), kilograms(25)];
        const station = { kind: 'body', belt, assistance, ...named } as const;
        const body = loadFromValue(kilograms(80));
        const hung = sums([...plates, ...pieces], 1, 1).map((sum) =>
          addLoads(body, loadFromValue(belt.base), sum),
        );
        const helped = assistance.map((help) => (body - loadFromValue(help)) as Load);
        expect(loadsOf(station, { plates, bodyWeight: kilograms(80) })).toEqual(
          sorted([body, ...helped, ...hung]),
        );
      }),
    );
  });
});
