import { type Load, loadFromValue } from '../load/index.ts';
import { compareSides } from './compareSides.ts';
import type { Plate } from './Equipment.ts';
import type { PlateLoading, StackPlace } from './Loading.ts';
import { samePlate } from './samePlate.ts';

/** Plates to carry to the other end so that a bar hangs level, or why there are none. */
export type EvenSides =
  | { readonly kind: 'even' }
  | {
      readonly kind: 'swap';
      readonly toLeft: readonly Plate[];
      readonly toRight: readonly Plate[];
      /** What remains between the ends: the least that these plates allow. */
      readonly differenceAfter: Load;
    }
  | { readonly kind: 'no-better' }
  | { readonly kind: 'too-many-ways' };

/** A way to share out the kinds looked at so far. */
interface Split {
  readonly left: number;
  readonly moved: number;
  /** Of the last kind: how many end up on the left. */
  readonly count: number;
  readonly before?: Split;
}

const MOST_SPLITS = 100_000;

/**
 * Which plates to carry from one end of a bar to the other so that the ends differ least, exactly,
 * and of all such ways one that carries the fewest plates. The total stays as it is.
 *
 * @returns `even` when the ends already weigh the same, `no-better` when no exchange helps, and
 * `too-many-ways` when the plates could be shared out in more than 100,000 different weights.
 * @throws RangeError for a loading without a left and a right end.
 * @example
 * ```ts
 * import { evenSides } from '@windlass/core/equipment';
 * const big = { weight: { value: 20, unit: 'kg' as const } };
 * const pounds = { weight: { value: 45, unit: 'lb' as const } };
 * const swap = evenSides({
 *   kind: 'plates',
 *   stacks: [{ place: 'left', plates: [big, big] }, { place: 'right', plates: [pounds, pounds] }],
 *   pieces: 4,
 * });
 * swap.kind === 'swap' ? [swap.toLeft.length, swap.toRight.length, swap.differenceAfter] : []; // [1, 1, 0]
 * ```
 */
export function evenSides(loading: PlateLoading): EvenSides {
  const sides = compareSides(loading);
  if (sides === undefined) {
    throw new RangeError('evenSides: the loading must have a left and a right end');
  }
  if (sides.difference === 0) return { kind: 'even' };
  const kinds = countKinds(loading);
  const best = bestSplit(kinds, sides.left + sides.right);
  if (best === undefined) return { kind: 'too-many-ways' };
  const differenceAfter = Math.abs(2 * best.left - sides.left - sides.right) as Load;
  if (differenceAfter === sides.difference) return { kind: 'no-better' };
  const counts = countsOf(best);
  const change = kinds.map(({ left }, index) => (counts[index] ?? 0) - left);
  const carried = (direction: 1 | -1) =>
    kinds.flatMap(({ plate }, index) =>
      new Array<Plate>(Math.max(0, direction * (change[index] ?? 0))).fill(plate),
    );
  return { kind: 'swap', toLeft: carried(1), toRight: carried(-1), differenceAfter };
}

interface KindOnBar {
  readonly plate: Plate;
  readonly weight: number;
  readonly left: number;
  readonly all: number;
}

function countKinds(loading: PlateLoading): readonly KindOnBar[] {
  const at = (place: StackPlace) =>
    loading.stacks.filter((stack) => stack.place === place).flatMap(({ plates }) => plates);
  const [left, all] = [at('left'), [...at('left'), ...at('right')]];
  const kinds = all.filter((plate, i) => all.findIndex((other) => samePlate(other, plate)) === i);
  return kinds.map((plate) => ({
    plate,
    weight: loadFromValue(plate.weight),
    left: left.filter((other) => samePlate(other, plate)).length,
    all: all.filter((other) => samePlate(other, plate)).length,
  }));
}

function bestSplit(kinds: readonly KindOnBar[], total: number): Split | undefined {
  let splits = new Map<number, Split>([[0, { left: 0, moved: 0, count: 0 }]]);
  for (const { weight, left, all } of kinds) {
    const next = new Map<number, Split>();
    for (const before of splits.values()) {
      for (let count = 0; count <= all; count += 1) {
        const split = {
          left: before.left + count * weight,
          moved: before.moved + Math.abs(count - left),
          count,
          before,
        };
        const known = next.get(split.left);
        if (known === undefined || split.moved < known.moved) next.set(split.left, split);
      }
    }
    if (next.size > MOST_SPLITS) return undefined;
    splits = next;
  }
  return [...splits.values()].reduce((a, b) => {
    const closer = Math.abs(2 * a.left - total) - Math.abs(2 * b.left - total);
    return closer < 0 || (closer === 0 && a.moved <= b.moved) ? a : b;
  });
}

/** How many of each kind end up on the left. */
function countsOf(split: Split): readonly number[] {
  return split.before === undefined ? [] : [...countsOf(split.before), split.count];
}
