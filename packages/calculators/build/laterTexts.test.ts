import { describe, expect, it } from 'vitest';
import { textsIn, withoutLongTexts } from './laterTexts.ts';

const rules = '/packages/core/src/safety/rules/workRules.ts';
const long = 'A load above the body has to be caught by something.';
const source = `export const rule = { id: 'alone', what: '${long}', why: '${long}', instead: 'Stop.' };`;

describe('withoutLongTexts', () => {
  it('takes the reasons of cautions out, and leaves what a caution says first', () => {
    const texts: string[] = [];
    const rewritten = withoutLongTexts(texts)(rules, source);
    expect(texts).toEqual([long]);
    expect(rewritten).toContain(`what: '${long}'`);
    expect(rewritten).toContain('get why() { return later(0); }');
    expect(rewritten).toContain("instead: 'Stop.'");
  });

  it('gives the same text the same number, and leaves other files alone', () => {
    const texts: string[] = [];
    const rewrite = withoutLongTexts(texts);
    rewrite(rules, source);
    rewrite(rules, source);
    expect(texts).toEqual([long]);
    expect(rewrite('/packages/core/src/load/kg.ts', source)).toBe(source);
  });
});

describe('textsIn', () => {
  it('finds what a bundle asks for, and nothing else', () => {
    const texts = ['one', 'two', 'three'];
    expect(textsIn('get why() { return later(2); } get why() { return later(0); }', texts)).toEqual(
      { 0: 'one', 2: 'three' },
    );
  });
});
