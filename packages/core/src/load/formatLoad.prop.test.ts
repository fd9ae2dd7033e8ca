import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLoad } from './formatLoad.ts';
import { kg } from './kg.ts';
import { loads, loadValues } from './loadArbitraries.testing.ts';
import { loadFromValue } from './loadFromValue.ts';
import { parseLoad } from './parseLoad.ts';

const locales = fc.constantFrom('en', 'de', 'fr', 'sv');

describe('formatLoad and parseLoad', () => {
  it('round-trip every load of 3 decimals in its own unit, over locales', () => {
    fc.assert(
      fc.property(loadValues, locales, (given, locale) => {
        const { unit } = given;
        const text = formatLoad(loadFromValue(given), { unit, locale, maxDecimals: 3 });
        const other = unit === 'kg' ? 'lb' : 'kg';
        expect(parseLoad(text, { unit: other, locale })).toEqual({
          ok: true,
          value: { value: given.value + 0, unit },
        });
      }),
    );
  });

  it('round-trip any load at all in kilograms with 11 decimals', () => {
    fc.assert(
      fc.property(loads, locales, (load, locale) => {
        const text = formatLoad(load, { unit: 'kg', locale, maxDecimals: 11 });
        const parsed = parseLoad(text, { unit: 'lb', locale });
        expect(parsed.ok && loadFromValue(parsed.value)).toBe(load);
      }),
      { numRuns: 1000 },
    );
  });

  it('show at most half of the last decimal of error, and mark it', () => {
    fc.assert(
      fc.property(loads, locales, (load, locale) => {
        const text = formatLoad(load, { unit: 'kg', locale, maxDecimals: 1 });
        const parsed = parseLoad(text, { unit: 'kg', locale });
        const shown = parsed.ok ? loadFromValue(parsed.value) : Number.NaN;
        expect(Math.abs(shown - load)).toBeLessThanOrEqual(kg(0.05));
        expect(text.startsWith('≈')).toBe(shown !== load);
      }),
    );
  });
});
