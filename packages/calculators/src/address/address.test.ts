import { describe, expect, it } from 'vitest';
import { barLoading } from '../bar-loading/definition.ts';
import { decodeAddress } from './decodeAddress.ts';
import { encodeAddress } from './encodeAddress.ts';

describe('the address of a calculator', () => {
  it('holds only what differs from the defaults, readable', () => {
    const texts = { ...barLoading.defaults, target: '100kg', plates: '20kg_4~45lb_2' };
    expect(encodeAddress(barLoading, texts)).toBe('target=100kg&plates=20kg_4~45lb_2');
  });

  it('keeps what it does not know, and the first of two values', () => {
    const address = decodeAddress(barLoading, '?target=100kg&from=mail&target=90kg');
    expect(address.texts.target).toBe('100kg');
    expect(address.others).toEqual([
      ['from', 'mail'],
      ['target', '90kg'],
    ]);
    expect(encodeAddress(barLoading, address.texts, address.others)).toBe(
      'target=100kg&from=mail&target=90kg',
    );
  });

  it('keeps the first of two values also where it is the default', () => {
    const address = decodeAddress(barLoading, 'target=82.5kg&target=100kg');
    expect(barLoading.defaults.target).toBe('82.5kg');
    expect(
      decodeAddress(barLoading, encodeAddress(barLoading, address.texts, address.others)),
    ).toEqual(address);
  });

  it('keeps a damaged value as it came', () => {
    expect(decodeAddress(barLoading, 'target=100k%').texts.target).toBe('100k%');
  });
});
