import { describe, expect, it } from 'vitest';
import { excerpt, marked } from './marked.ts';

const hits = (text: string, matched: readonly string[]) =>
  marked(text, matched)
    .filter(({ isHit }) => isHit)
    .map((piece) => piece.text);
const whole = (pieces: readonly { readonly text: string }[]) =>
  pieces.map(({ text }) => text).join('');

describe('marked', () => {
  it('marks whole words, whatever their case, and names by a part of them', () => {
    expect(hits('A tempo, or Tempos?', ['tempo'])).toEqual(['tempo']);
    expect(hits('Call planSession once.', ['session'])).toEqual(['planSession']);
    expect(hits('Warm-up sets', ['warm', 'up'])).toEqual(['Warm', 'up']);
  });

  it('changes nothing of the text', () => {
    const text = '4-1-2-0: “X” is a lift — fast.';
    expect(whole(marked(text, ['x']))).toBe(text);
    expect(marked('', ['x'])).toEqual([]);
  });
});

describe('excerpt', () => {
  const long = `${'one two three four five. '.repeat(20)}Here is the plate. ${'and so on. '.repeat(30)}`;

  it('shows a short text whole', () => {
    expect(whole(excerpt('A short text.', ['short']))).toBe('A short text.');
  });

  it('shows what stands around the first word that was meant', () => {
    const shown = whole(excerpt(long, ['plate']));
    expect(shown).toContain('Here is the plate.');
    expect(shown.startsWith('… ')).toBe(true);
    expect(shown.endsWith('…')).toBe(true);
    expect(shown.length).toBeLessThan(180);
  });

  it('shows the beginning where the word is not in the text', () => {
    expect(whole(excerpt(long, ['nowhere'])).startsWith('one two three')).toBe(true);
  });
});
