import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, loadFromValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';
import { evenSides } from './evenSides.ts';
import { ends, plate } from './oracle/exampleGear.ts';
import { samePlate } from './samePlate.ts';

const steps = (plates: readonly Plate[]) =>
  plates.reduce((sum, { weight }) => sum + loadFromValue(weight), 0);

/** Smallest difference and fewest carried plates over all ways to put each plate left or right. */
function tryAll(left: readonly Plate[], right: readonly Plate[]) {
  const all = [...left, ...right];
  let best = { difference: Number.POSITIVE_INFINITY, carried: 0 };
  for (let pattern = 0; pattern < 2 ** all.length; pattern += 1) {
    const onLeft = all.filter((_, index) => (pattern >> index) % 2 === 1);
    const difference = Math.abs(2 * steps(onLeft) - steps(all));
    const carried = all.filter(
      (_, index) => index < left.length !== ((pattern >> index) % 2 === 1),
    );
    if (
      difference < best.difference ||
      (difference === best.difference && carried.length < best.carried)
    ) {
      best = { difference, carried: carried.length };
    }
  }
  return best;
}

describe('evenSides', () => {
  it('swaps one plate of each where both ends have two of one kind', () => {
    const [kilograms, pounds] = [plate(20), plate(45, 'lb')];
    expect(evenSides(ends([kilograms, kilograms], [pounds, pounds]))).toEqual({
      kind: 'swap',
      toLeft: [pounds],
      toRight: [kilograms],
      differenceAfter: 0,
    });
  });

  it('has nothing to do on a level bar and no help for a single plate', () => {
    expect(evenSides(ends([plate(20)], [plate(10), plate(10)]))).toEqual({ kind: 'even' });
    expect(evenSides(ends([plate(20)], []))).toEqual({ kind: 'no-better' });
  });

  it('gives up on plates that could be shared out in too many ways', () => {
    const odd = Array.from({ length: 18 }, (_, index) => plate(0.001 * 2 ** index));
    expect(evenSides(ends(odd, []))).toEqual({ kind: 'too-many-ways' });
  });

  it('weighs 100,000 ways to share plates out, and no more', () => {
    // nine each of 1, 10, 100, 1000 and 10,000 g: the left end can have 0 to 99,999 g
    const digits = [0.001, 0.01, 0.1, 1, 10].flatMap((size) => new Array(9).fill(plate(size)));
    // 49,999 and 50,000 g are as even as it gets
    expect(evenSides(ends(digits, []))).toMatchObject({ differenceAfter: kg(0.001) });
    expect(evenSides(ends([...digits, plate(100)], []))).toEqual({ kind: 'too-many-ways' });
  });

  it('carries the fewest plates of all ways that are as even', () => {
    // 25 on each end: one 5 across, or 20 + 5 against 10 + 10
    expect(evenSides(ends([plate(20), plate(5), plate(5)], [plate(10), plate(10)]))).toEqual({
      kind: 'swap',
      toLeft: [],
      toRight: [plate(5)],
      differenceAfter: 0,
    });
  });

  it.each(['left', 'right', 'post'] as const)('refuses a loading of one end: %s', (place) => {
    const stacks = [{ place, plates: [plate(5)] }];
    expect(() => evenSides({ kind: 'plates', stacks, pieces: 1 })).toThrow(
      /evenSides: the loading must have/,
    );
  });

  it('finds what trying every arrangement finds', () => {
    const some = fc.array(
      fc.constantFrom(plate(20), plate(45, 'lb'), plate(10), plate(10, 'lb'), plate(2.5)),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(some, some, (left, right) => {
        const answer = evenSides(ends(left, right));
        const best = tryAll(left, right);
        if (answer.kind !== 'swap') {
          expect(best.difference).toBe(Math.abs(steps(left) - steps(right)));
          return;
        }
        expect(answer.differenceAfter).toBe(best.difference);
        const carried = answer.toLeft.length + answer.toRight.length;
        expect(carried).toBe(best.carried);
        const has = (plates: readonly Plate[], wanted: Plate) =>
          plates.some((other) => samePlate(other, wanted));
        expect(answer.toRight.every((moved) => has(left, moved))).toBe(true);
        expect(answer.toLeft.every((moved) => has(right, moved))).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
