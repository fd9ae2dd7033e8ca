import { describe, expect, it } from 'vitest';
import { reachableLoads, type SelectorStack } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { barWith, rackOf, stack } from './gym.testing.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { movedLoad } from './movedLoad.ts';

const set: LoggedSet = {
  date: '2026-03-02',
  exercise: 'cable-row',
  set: 1,
  load: { value: 40, unit: 'kg' },
  counts: 'stack',
  reps: 8,
};
const of = (change: Partial<LoggedSet>, context?: Parameters<typeof movedLoad>[1]) => {
  const moved = movedLoad({ ...set, ...change }, context);
  return moved.kind === 'load' ? [toKg(moved.load), toKg(moved.total)] : moved.kind;
};
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const halving = {
  kind: 'stack',
  id: 'tower',
  name: 'Tower',
  pulleyRatio: 2,
  first: kilos(10),
  rest: [{ weight: kilos(10), pieces: 9 }],
} satisfies SelectorStack;

describe('movedLoad', () => {
  it('is the number itself where nothing else is known', () => {
    expect(of({})).toEqual([40, 40]);
    expect(of({ counts: 'total' })).toEqual([40, 40]);
    expect(of({ load: kilos(0) })).toBe('nothing-moved');
  });

  it('counts a weight in each hand once for the curve and both times in total', () => {
    expect(of({ counts: 'each-hand' })).toEqual([40, 80]);
    expect(of({ counts: 'each-hand', hands: 1 })).toEqual([40, 40]);
    expect(of({ counts: 'each-hand', side: 'left' })).toEqual([40, 40]);
    expect(of({ counts: 'stack', hands: 2 })).toEqual([40, 40]);
  });

  it('is what the machine makes of its number, and nothing for a number that it cannot show', () => {
    // two to one: 40 on the stack moves as 20
    const machine = reachableLoads(halving);
    expect(of({}, { machine })).toEqual([20, 20]);
    expect(of({ load: kilos(45) }, { machine })).toBe('not-of-this-machine');
    expect(of({ load: kilos(45), counts: 'plates' }, { machine })).toEqual([45, 45]);
    expect(of({}, { machine: reachableLoads({ ...halving, rest: [], first: kilos(0) }) })).toBe(
      'not-of-this-machine',
    );
  });

  it('takes a weight that a rack or a bar has not got as it was written', () => {
    const { loads } = rackOf('kg', 10, 20);
    const each = { counts: 'each-hand', load: kilos(15) } as const;
    expect(of(each, { machine: loads })).toEqual([15, 30]);
    expect(of({ ...each, load: kilos(20) }, { machine: loads })).toEqual([20, 40]);
    expect(of({ counts: 'total', load: kilos(15) }, { machine: stack().loads })).toEqual([15, 15]);
  });

  it('adds the body, the one of the day first, and as much of it as moves', () => {
    const added = { counts: 'added', load: kilos(10) } as const;
    expect(of(added)).toBe('body-weight-not-given');
    expect(of(added, { bodyWeight: kg(80) })).toEqual([90, 90]);
    expect(of({ ...added, bodyWeight: kilos(75) }, { bodyWeight: kg(80) })).toEqual([85, 85]);
    // between a half and seven tenths of 80 kg: 48 kg, and 10 on top
    const share = { bodyWeight: kg(80), movedShare: { low: 0.5, high: 0.7 } };
    expect(of(added, share)).toEqual([58, 58]);
    expect(of({ ...added, load: kilos(-80) }, { bodyWeight: kg(80) })).toBe('nothing-moved');
  });

  it('never looks for added weight on a machine', () => {
    const machine = reachableLoads(
      {
        kind: 'body',
        id: 'bar',
        name: 'Bar',
        belt: { pieces: [{ weight: kilos(10), pieces: 1 }] },
      },
      { bodyWeight: kilos(90) },
    );
    const added = { counts: 'added', load: kilos(10), bodyWeight: kilos(75) } as const;
    expect(of(added, { machine })).toEqual([85, 85]);
  });

  it('takes a total that the bar cannot make as it was written', () => {
    const { loads } = barWith(20, 10);
    expect(of({ counts: 'total', load: kilos(21) }, { machine: loads })).toEqual([21, 21]);
  });
});
