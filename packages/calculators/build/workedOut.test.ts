import { describe, expect, it } from 'vitest';
import { unreadColumns } from './workedOut.ts';

describe('unreadColumns', () => {
  it('takes a column for read in every way that code can name it', () => {
    const code = `a.holds; const { loads, wayBack: way } = b; c['sides']; d["support"]; // stations`;
    const unread = unreadColumns(code);
    for (const read of ['holds', 'loads', 'wayBack', 'sides', 'support'])
      expect(unread.has(read)).toBe(false);
    expect(unread.has('stations')).toBe(true);
    expect(unread.has('eccentricFactor')).toBe(true);
  });
});
