import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closestWords } from './closestWords.ts';

/** The number of edits as it is defined: the first letters match, or one of the three edits is made. */
function edits(a: string, b: string): number {
  if (a === '' || b === '') return a.length + b.length;
  if (a[0] === b[0]) return edits(a.slice(1), b.slice(1));
  return 1 + Math.min(edits(a.slice(1), b), edits(a, b.slice(1)), edits(a.slice(1), b.slice(1)));
}

const letters = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 5 });

describe('closestWords', () => {
  it('names the first by edits, and of as many edits the first by alphabet', () => {
    fc.assert(
      fc.property(
        letters,
        fc.uniqueArray(letters, { maxLength: 8 }),
        fc.nat(4),
        (word, candidates, count) => {
          const ranked = candidates.toSorted(
            (a, b) => edits(word, a) - edits(word, b) || (a < b ? -1 : 1),
          );
          expect(closestWords(word, candidates, count)).toEqual(ranked.slice(0, count));
        },
      ),
    );
  });
});
