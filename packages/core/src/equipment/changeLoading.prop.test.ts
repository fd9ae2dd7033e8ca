import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadFromValue } from '../load/index.ts';
import { changeLoading } from './changeLoading.ts';
import type { Plate } from './Equipment.ts';
import type { Handling } from './Handling.ts';
import { bothEnds, ends, plate } from './oracle/exampleGear.ts';

const weights = [20, 10, 5] as const;
const stack = fc
  .array(fc.constantFrom(...weights), { maxLength: 4 })
  .map((values) => values.map((value) => plate(value)));

const names = (plates: readonly Plate[]) => plates.map(({ weight }) => weight.value).join(' ');

/** Does what the steps say; a plate that is not outermost cannot come off. */
function replay(left: readonly Plate[], right: readonly Plate[], { steps }: Handling) {
  const bar = { left: [...left], right: [...right] };
  for (const step of steps) {
    if (!('place' in step) || (step.place !== 'left' && step.place !== 'right')) {
      throw new Error('not a step on a bar');
    }
    const end = bar[step.place];
    if (step.action === 'put-on') end.push(step.plate);
    else expect(end.pop()).toEqual(step.plate);
  }
  return bar;
}

/** Fewest moves from one stack to another, by breadth-first search over all stacks. */
function fewestMoves(from: readonly Plate[], to: readonly Plate[]): number {
  const goal = names(to);
  const seen = new Set([names(from)]);
  let reached: (readonly Plate[])[] = [from];
  for (let moves = 0; ; moves += 1) {
    if (reached.some((plates) => names(plates) === goal)) return moves;
    const next = reached.flatMap((plates) => [
      ...(plates.length > 0 ? [plates.slice(0, -1)] : []),
      ...(plates.length < 4 ? weights.map((value) => [...plates, plate(value)]) : []),
    ]);
    reached = next.filter((plates) => {
      const known = seen.has(names(plates));
      seen.add(names(plates));
      return !known;
    });
  }
}

describe('changeLoading', () => {
  it('leads to the loading that was asked for, from the outside', () => {
    fc.assert(
      fc.property(stack, stack, stack, stack, (a, b, c, d) => {
        const bar = replay(a, b, changeLoading(ends(a, b), ends(c, d)));
        expect([names(bar.left), names(bar.right)]).toEqual([names(c), names(d)]);
      }),
    );
  });

  it('moves as few pieces as a search over all sequences', () => {
    fc.assert(
      fc.property(stack, stack, stack, stack, (a, b, c, d) => {
        const expected = fewestMoves(a, c) + fewestMoves(b, d);
        expect(changeLoading(ends(a, b), ends(c, d)).pieces).toBe(expected);
      }),
      { numRuns: 200 },
    );
  });

  it('is as long one way as the other, nothing for the same loading, never a detour', () => {
    fc.assert(
      fc.property(stack, stack, stack, (a, b, c) => {
        const [x, y, z] = [bothEnds(...a), bothEnds(...b), bothEnds(...c)];
        const moved = (from: typeof x, to: typeof x) => changeLoading(from, to).pieces;
        expect(moved(x, x)).toBe(0);
        expect(moved(x, y)).toBe(moved(y, x));
        expect(moved(x, z)).toBeLessThanOrEqual(moved(x, y) + moved(y, z));
      }),
    );
  });

  it('never lets mirrored ends differ by more than the heaviest plate that is moved', () => {
    fc.assert(
      fc.property(stack, stack, (a, b) => {
        const { steps, mostSideDifference } = changeLoading(bothEnds(...a), bothEnds(...b));
        const moved = steps.map((step) => ('plate' in step ? loadFromValue(step.plate.weight) : 0));
        expect(mostSideDifference).toBe(Math.max(0, ...moved));
      }),
    );
  });
});
