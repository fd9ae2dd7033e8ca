import { describe, expect, it } from 'vitest';
import type { Loading, Plate, ReachableLoad, StackPlace } from '../equipment/index.ts';
import { kg } from '../load/index.ts';
import { stackTree } from './StackTree.ts';

const BAR = ['left', 'right'] as const;
const HANDLES = [
  'first-handle-left',
  'first-handle-right',
  'second-handle-left',
  'second-handle-right',
] as const;

const plate = (value: number, size: Partial<Plate> = {}): Plate => ({
  weight: { value, unit: 'kg' },
  ...size,
});
const made = (loading: Loading): ReachableLoad => ({ load: kg(50), shown: kg(50), loading });

/** Plates on each of the places, from the inside. */
function loaded(places: readonly StackPlace[], ...stacks: readonly (readonly Plate[])[]) {
  return made({
    kind: 'plates',
    stacks: places.map((place, at) => ({ place, plates: stacks[at] ?? stacks[0] ?? [] })),
    pieces: 0,
  });
}
const onBar = (...plates: readonly Plate[]) => loaded(BAR, plates);

describe('stackTree', () => {
  it('has a node for every stack on the way from the empty one', () => {
    const ways = [
      onBar(),
      onBar(plate(20)),
      onBar(plate(20), plate(5)),
      onBar(plate(10), plate(5)),
    ];
    const tree = stackTree(ways);
    // nothing; 20; 20 + 5; 10; 10 + 5
    expect(tree).toMatchObject({ size: 5, sides: 2 });
    expect(ways.map((way) => tree?.pathOf(way))).toEqual([[0], [0, 1], [0, 1, 2], [0, 3, 4]]);
    expect(tree?.pathOf(onBar())).toEqual([]);
    expect(tree?.pathOf(undefined)).toEqual([]);
  });

  it('tells plates apart by weight, thickness and diameter, not by what they are called', () => {
    const kinds = [
      plate(20),
      plate(20, { thicknessMm: 30 }),
      plate(20, { diameterMm: 450 }),
      plate(10),
    ];
    expect(stackTree(kinds.map((kind) => onBar(kind)))?.size).toBe(5);
    expect(stackTree([onBar(plate(20)), onBar({ weight: { value: 20, unit: 'kg' } })])?.size).toBe(
      2,
    );
  });

  it('counts all stacks of a pair of handles', () => {
    expect(stackTree([loaded(HANDLES, [plate(2)])])?.sides).toBe(4);
  });

  it('is none where the stacks of one loading differ', () => {
    const [large, small] = [plate(20), plate(5)];
    const uneven = [
      loaded(BAR, [large], [small]),
      loaded(BAR, [large], [large, small]),
      loaded(BAR, [large, small], [large]),
      loaded(BAR, [large, small], [small, large]),
      loaded(BAR, [large, small], [large, large]),
      loaded(HANDLES, [large], [large], [large], [small]),
    ];
    for (const way of uneven) expect(stackTree([onBar(large), way])).toBeUndefined();
  });

  it('is none for what has no stack', () => {
    const added = { value: -10, unit: 'kg' } as const;
    expect(stackTree([made({ kind: 'assistance', added, pieces: 0 })])).toBeUndefined();
    expect(stackTree([loaded([])])).toBeUndefined();
  });
});
