import { describe, expect, it } from 'vitest';
import { parseLoad } from './parseLoad.ts';

describe('a load that cannot be read comes back with what its sentence is made of', () => {
  it.each([
    ['10 stone', 'unknown-unit', { word: 'stone' }],
    ['0.1234 lb', 'too-fine', { decimals: 3, unit: 'lb' }],
    ['50000', 'out-of-range', { largest: 45_000, unit: 'kg' }],
    ['1,234', 'ambiguous-mark', { text: '1,234', thousands: '1234', decimal: '1,2340', mark: ',' }],
    ['12.345,6', 'thousands-mark', { text: '12.345,6', suggestion: '12345,6' }],
  ])('%s', (text, name, params) => {
    const read = parseLoad(text, { unit: 'kg' });
    expect(read.ok ? [] : read.problems).toMatchObject([
      { code: `load.${name}`, path: [], params },
    ]);
  });

  it.each(['12..5', 'x12,345', '1234,567,89', '1,2345,678.9', '12,345.6.7', '1 2'])(
    'is no number with marks between thousands: %s',
    (text) => {
      const read = parseLoad(text, { unit: 'kg' });
      expect(read.ok ? [] : read.problems).toMatchObject([{ code: 'load.not-a-load', path: [] }]);
    },
  );

  it('asks for a number where only a sign and a unit stand', () => {
    const read = parseLoad('- kg', { unit: 'kg' });
    expect(read.ok ? [] : read.problems).toMatchObject([
      { code: 'load.not-a-load', message: expect.stringMatching(/^Start with a number/) },
    ]);
  });

  it.each([
    [',5', 0.5],
    ['5,', 5],
    ['0.123', 0.123],
    ['1234.567', 1234.567],
  ])('%s is %d, whichever mark', (text, value) => {
    expect(parseLoad(text, { unit: 'kg' })).toMatchObject({ value: { value } });
  });
});
