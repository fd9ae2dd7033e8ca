import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrapped } from './wrapped.ts';

const WIDTH = 78;
const word = fc.string({
  unit: fc.constantFrom('a', 'é', '—', '9', '.'),
  minLength: 1,
  maxLength: 30,
});
const indent = fc.integer({ min: 0, max: 12 }).map((blanks) => ' '.repeat(blanks));

describe('wrapped', () => {
  it('keeps every word in order, as many in a line as there is room for', () => {
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 40 }),
        indent,
        indent,
        (words, first, later) => {
          const lines = wrapped(words.join(' '), first, later);
          const bare = lines.map((line, at) => {
            const blanks = at === 0 ? first : later;
            expect(line.startsWith(blanks)).toBe(true);
            return line.slice(blanks.length);
          });
          expect(bare.join(' ')).toBe(words.join(' '));
          for (const [at, line] of lines.entries()) {
            if (bare[at]?.includes(' ')) expect(line.length).toBeLessThanOrEqual(WIDTH);
            const next = bare[at + 1]?.split(' ')[0];
            if (next !== undefined) expect(line.length + 1 + next.length).toBeGreaterThan(WIDTH);
          }
        },
      ),
    );
  });

  it('fills a line to its last place, and indents all lines alike where nothing else is said', () => {
    const [whole, more] = ['a'.repeat(38), 'b'.repeat(37)];
    expect(wrapped(`${whole} ${more}`, '  ')).toEqual([`  ${whole} ${more}`]);
    expect(wrapped(`${whole} ${more}b`, '  ')).toEqual([`  ${whole}`, `  ${more}b`]);
  });
});
