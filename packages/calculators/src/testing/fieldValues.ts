import fc from 'fast-check';
import type { Calculator } from '../contract/Calculator.ts';
import type { Field, ScalarField } from '../fields/Field.ts';

type Json = Readonly<Record<string, unknown>>;

/** Inputs that a calculator's JSON Schema allows. */
export function jsonInputs(calculator: Calculator): fc.Arbitrary<Json> {
  return fc.record(
    Object.fromEntries(
      Object.entries(calculator.fields).map(([name, field]) => [name, fieldValue(field)]),
    ),
  );
}

function fieldValue(field: Field): fc.Arbitrary<unknown> {
  const present = presentValue(field);
  return field.optional ? fc.option(present) : present;
}

function presentValue(field: Field): fc.Arbitrary<unknown> {
  if (field.kind === 'rows') return rowsValue(field);
  if (field.kind === 'many') return fc.subarray(field.options.map(({ id }) => id));
  return scalarValue(field);
}

function rowsValue(field: Extract<Field, { kind: 'rows' }>): fc.Arbitrary<unknown> {
  const row = fc.record(
    Object.fromEntries(
      Object.entries(field.columns).map(([name, column]) => [name, fieldValue(column)]),
    ),
  );
  return fc.array(row, { minLength: field.minRows, maxLength: Math.min(field.maxRows, 7) });
}

function scalarValue(field: ScalarField): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case 'number':
      return field.step === 1
        ? fc.integer({ min: field.min, max: field.max })
        : hundredths(field.min, field.max);
    case 'load':
      return fc.oneof(
        hundredths(field.minKg, field.maxKg).map((value) => ({ value, unit: 'kg' })),
        hundredths(field.minKg / 0.45, field.maxKg / 0.454).map((value) => ({ value, unit: 'lb' })),
      );
    case 'tempo':
      return fc
        .tuple(
          fc.integer({ min: 1, max: 20 }),
          fc.integer({ min: 0, max: 9 }),
          fc.oneof(fc.constant('X'), fc.integer({ min: 0, max: 20 })),
          fc.integer({ min: 0, max: 9 }),
        )
        .map((parts) => parts.join('-'));
    case 'window':
      return fc
        .tuple(
          fc.integer({ min: field.min, max: field.max }),
          fc.integer({ min: field.min, max: field.max }),
        )
        .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));
    case 'choice':
      return fc.constantFrom(...field.options.map(({ id }) => id));
    case 'date':
      return fc
        .date({
          min: new Date(`${field.min}T00:00:00Z`),
          max: new Date(`${field.max}T00:00:00Z`),
          noInvalidDate: true,
        })
        .map((date) => date.toISOString().slice(0, 10));
    case 'time':
      return fc
        .integer({ min: 0, max: 1439 })
        .map((minutes) => new Date(minutes * 60_000).toISOString().slice(11, 16));
    case 'text':
      return fc.constantFrom('', 'squats', 'deadlift, shrugs', 'what the doctor wrote');
  }
}

function hundredths(min: number, max: number): fc.Arbitrary<number> {
  return fc
    .integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) })
    .map((value) => value / 100);
}

/** Words that give away a number or value that was never there. */
export const LEAKS = /\b(NaN|undefined|Infinity|\[object)\b/;

const NASTY = [
  '',
  ' ',
  '0',
  '-0',
  '-5',
  '1e309',
  'NaN',
  'Infinity',
  '99999999999999999999',
  '0.0000000001',
  '62,5',
  '1.000.000,5',
  '12-3',
  '0-0-0-0',
  '0000',
  'XXXX',
  '0kg',
  '-20kg',
  '0.1kg',
  '600kg',
  '1000000lb',
  '5 stone',
  '~',
  '_',
  '20kg_2~',
  '20kg~20kg_2_2',
  'squat?',
  '<img src=x onerror=alert(1)>',
  '\u0000\ud83d\ude00',
] as const;

/** Texts that no form should choke on: absurd, damaged, hostile, or the default, mixed. */
export function nastyTexts(calculator: Calculator): fc.Arbitrary<Record<string, string>> {
  return fc.record(
    Object.fromEntries(
      Object.entries(calculator.defaults).map(([name, text]) => [
        name,
        fc.oneof(
          { weight: 6, arbitrary: fc.constant(text) },
          { weight: 2, arbitrary: fc.constantFrom(...nastyFor(calculator.fields[name])) },
          { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 30 }) },
        ),
      ]),
    ),
  );
}

/** A field of words is repeated on the page, so it is spared the words that give away a lost number. */
function nastyFor(field: Field | undefined): readonly string[] {
  return field?.kind === 'text' ? NASTY.filter((text) => !LEAKS.test(text)) : NASTY;
}
