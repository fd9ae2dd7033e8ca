import { describe, expect, it } from 'vitest';
import type { Unit } from './Load.ts';
import { parseLoad } from './parseLoad.ts';

describe('parseLoad', () => {
  it.each<[string, number, Unit]>([
    ['62.5', 62.5, 'kg'],
    ['62,5', 62.5, 'kg'],
    ['  62,5  KG ', 62.5, 'kg'],
    ['62.5\u00a0kg', 62.5, 'kg'],
    ['100kgs', 100, 'kg'],
    ['100 kilo', 100, 'kg'],
    ['100 Kilos', 100, 'kg'],
    ['100 kilograms', 100, 'kg'],
    ['135lb', 135, 'lb'],
    ['135 LBS.', 135, 'lb'],
    ['45#', 45, 'lb'],
    ['2.5 pounds', 2.5, 'lb'],
    ['1 pound', 1, 'lb'],
    ['-20', -20, 'kg'],
    ['−20,5 kg', -20.5, 'kg'],
    ['– 35 lb', -35, 'lb'],
    ['+10', 10, 'kg'],
    ['0', 0, 'kg'],
    ['-0', 0, 'kg'],
    ['.5', 0.5, 'kg'],
    ['5.', 5, 'kg'],
    ['5,0', 5, 'kg'],
    ['1234', 1234, 'kg'],
    ['1234,567', 1234.567, 'kg'],
    ['0,250', 0.25, 'kg'],
    ['1.2340', 1.234, 'kg'],
    ['≈ 60.82 kg', 60.82, 'kg'],
    ['0.00000000001', 1e-11, 'kg'],
  ])('reads %j', (text, value, unit) => {
    const parsed = parseLoad(text, { unit: 'kg' });
    expect(parsed).toEqual({ ok: true, value: { value, unit } });
  });

  it('takes the unit of the caller where none is written', () => {
    expect(parseLoad('45', { unit: 'lb' })).toEqual({ ok: true, value: { value: 45, unit: 'lb' } });
    expect(parseLoad('45 kg', { unit: 'lb' })).toMatchObject({ value: { unit: 'kg' } });
  });

  it.each<[string, string, string]>([
    ['', 'load.empty', 'for example 62.5 kg'],
    ['   ', 'load.empty', 'for example 62.5 kg'],
    ['kg', 'load.not-a-load', 'Start with a number'],
    ['bar', 'load.not-a-load', 'Start with a number'],
    ['-', 'load.not-a-load', 'Start with a number'],
    ['1.2.3', 'load.not-a-load', 'Write the load as one number'],
    ['12 5', 'load.not-a-load', 'Write the load as one number'],
    [',', 'load.not-a-load', 'Write the load as one number'],
    ['10 st', 'load.unknown-unit', 'Write kg or lb after the number, not "st"'],
    ['10 Pfund', 'load.unknown-unit', 'Write kg or lb'],
    ['1e3', 'load.unknown-unit', 'Write kg or lb'],
    ['20 constructor', 'load.unknown-unit', 'Write kg or lb'],
    ['1,234', 'load.ambiguous-mark', 'Write 1234 for the first, 1,2340 for the second'],
    ['1.250 kg', 'load.ambiguous-mark', 'Write 1250 for the first, 1.2500 for the second'],
    ['123,456', 'load.ambiguous-mark', '123456'],
    ['1,234.5', 'load.thousands-mark', ': 1234.5.'],
    ['1.234,5', 'load.thousands-mark', ': 1234,5.'],
    ['1,234.567', 'load.thousands-mark', ': 1234.567.'],
    ['1 234 kg', 'load.thousands-mark', ': 1234.'],
    ['1’234', 'load.thousands-mark', ': 1234.'],
    ['1.234.567', 'load.thousands-mark', ': 1234567.'],
    ['0.123456789012', 'load.too-fine', 'at most 11 decimals for a load in kg'],
    ['0.1234 lb', 'load.too-fine', 'at most 3 decimals for a load in lb'],
    ['45001', 'load.out-of-range', 'from -45000 to 45000 kg'],
    ['-99209 lb', 'load.out-of-range', 'from -99208 to 99208 lb'],
    [`1${' '.repeat(100)}`, 'load.not-a-load', 'at most 100 characters'],
  ])('refuses %j with words that help', (text, code, help) => {
    const parsed = parseLoad(text, { unit: 'kg' });
    if (parsed.ok) throw new Error(`read as ${JSON.stringify(parsed.value)}`);
    expect(parsed.problems).toHaveLength(1);
    expect(parsed.problems[0]?.code).toBe(code);
    expect(parsed.problems[0]?.message).toContain(help);
  });

  it('reads 100 characters', () => {
    expect(parseLoad(`${' '.repeat(98)}20`, { unit: 'kg' })).toMatchObject({
      value: { value: 20 },
    });
  });

  it('trusts the decimal mark of a locale, and only that', () => {
    expect(parseLoad('1.250', { unit: 'kg', locale: 'en' })).toMatchObject({
      value: { value: 1.25 },
    });
    expect(parseLoad('1,250', { unit: 'kg', locale: 'de' })).toMatchObject({
      value: { value: 1.25 },
    });
    expect(parseLoad('1,250', { unit: 'kg', locale: 'en' }).ok).toBe(false);
    expect(parseLoad('1.250', { unit: 'kg', locale: 'sv' }).ok).toBe(false);
    expect(parseLoad('2,5', { unit: 'kg', locale: 'en' })).toMatchObject({ value: { value: 2.5 } });
  });
});
