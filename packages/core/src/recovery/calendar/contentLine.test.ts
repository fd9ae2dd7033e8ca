import { describe, expect, it } from 'vitest';
import { contentLine, escapedText } from './contentLine.ts';

describe('contentLine', () => {
  it('keeps 75 octets on a line and folds at the 76th', () => {
    // "A:" and 73 letters
    expect(contentLine('A', 'x'.repeat(73))).toBe(`A:${'x'.repeat(73)}\r\n`);
    expect(contentLine('A', 'x'.repeat(74))).toBe(`A:${'x'.repeat(73)}\r\n x\r\n`);
  });

  it('counts the blank that begins a folded line', () => {
    // 73 letters, then 74 behind the blank, then one more
    expect(contentLine('A', 'x'.repeat(148)).split('\r\n').slice(1, 3)).toEqual([
      ` ${'x'.repeat(74)}`,
      ' x',
    ]);
  });

  it('counts octets and not characters', () => {
    // 72 letters leave one octet, and ü takes two
    expect(contentLine('A', `${'x'.repeat(72)}ü`)).toBe(`A:${'x'.repeat(72)}\r\n ü\r\n`);
  });
});

describe('escapedText', () => {
  it('escapes as RFC 5545 asks, and writes every kind of line end as one', () => {
    expect(escapedText('a;b,c\\d')).toBe('a\\;b\\,c\\\\d');
    expect(escapedText('a\nb\r\nc\rd')).toBe('a\\nb\\nc\\nd');
  });

  it('leaves out control characters except the tab', () => {
    expect(escapedText('a\u0000b\u0007c\td\u007fe')).toBe('abc\tde');
  });
});
