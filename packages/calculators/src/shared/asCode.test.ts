import { describe, expect, it } from 'vitest';
import { asCode, codeLine } from './asCode.ts';

describe('asCode', () => {
  it('keeps on one line what fits there', () => {
    expect(asCode({ value: 20, unit: 'kg' })).toBe("{ value: 20, unit: 'kg' }");
    expect(asCode([])).toBe('[]');
    expect(asCode({})).toBe('{}');
  });

  it('breaks what does not fit, one item a line', () => {
    const code = asCode(Array.from({ length: 4 }, () => ({ weight: { value: 20, unit: 'kg' } })));
    expect(code.split('\n')).toEqual([
      '[',
      ...Array.from({ length: 4 }, () => "  { weight: { value: 20, unit: 'kg' } },"),
      ']',
    ]);
  });

  it('escapes what would end a text', () => {
    expect(codeLine("it's \\")).toBe("'it\\'s \\\\'");
  });
});
