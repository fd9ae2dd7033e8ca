import fc from 'fast-check';
import type { PlateStock } from '../Equipment.ts';

const kilograms = [25, 20, 15, 10, 7.5, 5, 2.5, 2, 1.25, 1, 0.5];
const pounds = [55, 45, 35, 25, 10, 5, 2.5, 1.25];

const weight = fc.oneof(
  fc.record({ value: fc.constantFrom(...kilograms), unit: fc.constant('kg' as const) }),
  fc.record({ value: fc.constantFrom(...pounds), unit: fc.constant('lb' as const) }),
);

/** One to four kinds of plates, up to seven pieces each, kilograms and pounds, some with a thickness. */
export const smallStock: fc.Arbitrary<readonly PlateStock[]> = fc.array(
  fc
    .record({
      weight,
      pieces: fc.integer({ min: 0, max: 7 }),
      thicknessMm: fc.option(fc.constantFrom(8, 12.5, 20, 33.3), { nil: undefined }),
    })
    .map(({ thicknessMm, ...stock }) =>
      thicknessMm === undefined ? stock : { ...stock, thicknessMm },
    ),
  { minLength: 1, maxLength: 4 },
);

/** The room on a sleeve: tight, roomy, or not limited. */
export const sleeve: fc.Arbitrary<number | undefined> = fc.constantFrom(
  undefined,
  40,
  66.6,
  100,
  400,
);
