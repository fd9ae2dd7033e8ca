import { describe, expect, it } from 'vitest';
import { stepTempoPart, tempoParts } from './tempoParts.ts';

const texts = (text: string, order: 'lower-first' | 'lift-first') =>
  tempoParts(text, order).map((part) => part.text);

describe('tempoParts', () => {
  it('keeps the order that was written', () => {
    expect(texts('30X1', 'lower-first')).toEqual(['3', '0', 'X', '1']);
    expect(texts('X130', 'lift-first')).toEqual(['X', '1', '3', '0']);
    expect(tempoParts('X130', 'lift-first')[0]?.phase).toBe('lift');
  });

  it('shows zeros for what cannot be read', () => {
    expect(texts('slowly', 'lower-first')).toEqual(['0', '0', '0', '0']);
  });
});

describe('stepTempoPart', () => {
  it('moves by whole seconds and stays at or above 0', () => {
    expect(stepTempoPart('4-0-2-0', 'lower-first', 0, 1)).toBe('5-0-2-0');
    expect(stepTempoPart('4-0-2-0', 'lower-first', 1, -1)).toBe('4-0-2-0');
    expect(stepTempoPart('2.5-0-1-0', 'lower-first', 0, 1)).toBe('3-0-1-0');
    expect(stepTempoPart('2.5-0-1-0', 'lower-first', 0, -1)).toBe('2-0-1-0');
    expect(stepTempoPart('60-0-1-0', 'lower-first', 0, 1)).toBe('60-0-1-0');
  });

  it('steps a fast lift up to one second', () => {
    expect(stepTempoPart('30X0', 'lower-first', 2, 1)).toBe('3-0-1-0');
  });
});
