import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadFromValue } from './loadFromValue.ts';
import { parseLoad } from './parseLoad.ts';

const typed = fc.oneof(
  fc.string(),
  fc.stringMatching(/^[≈+−-]? ?[0-9]{0,5}[.,' ]?[0-9]{0,4}[.,]?[0-9]{0,13} ?(kg|LBS|#|x)?$/),
);

describe('parseLoad', () => {
  it('reads any text into an exact load or says what is wrong, and never throws', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom('kg', 'lb'), (text, unit) => {
        const parsed = parseLoad(text, { unit });
        if (parsed.ok) {
          expect(Number.isSafeInteger(loadFromValue(parsed.value))).toBe(true);
        } else {
          expect(parsed.problems.every((problem) => problem.message.length > 0)).toBe(true);
        }
      }),
      { numRuns: 5000 },
    );
  });

  it('is helped by what its problem suggests for a mark that can mean two things', () => {
    // Up to 44.999, so that both readings are loads (45 t is the heaviest).
    const whole = fc.integer({ min: 1, max: 44 });
    const three = fc.integer({ min: 0, max: 999 }).map((value) => String(value).padStart(3, '0'));
    fc.assert(
      fc.property(whole, fc.constantFrom('.', ','), three, (before, mark, after) => {
        const parsed = parseLoad(`${before}${mark}${after}`, { unit: 'kg' });
        const { thousands, decimal } = (!parsed.ok && parsed.problems[0]?.params) || {};
        const read = (text: unknown) => parseLoad(String(text), { unit: 'kg' });
        const value = (kilograms: number) => ({
          ok: true,
          value: { value: kilograms, unit: 'kg' },
        });
        expect(read(thousands)).toEqual(value(Number(`${before}${after}`)));
        expect(read(decimal)).toEqual(value(Number(`${before}.${after}`)));
      }),
    );
  });
});
