// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { calculators } from '../calculators.ts';
import { findCalculator } from '../findCalculator.ts';
import { attributeOf } from './attributeOf.ts';
import { readAttributes } from './readAttributes.ts';

const barLoading = findCalculator('bar-loading');
if (!barLoading) throw new Error('no bar-loading');

describe('readAttributes', () => {
  it('gives texts, the default where an attribute is taken away or cannot be taken', () => {
    const { texts, problems } = readAttributes(barLoading, {
      target: '60kg',
      'bar-weight': null,
      collar: '-1kg',
    });
    expect(texts).toEqual({ target: '60kg', barWeight: '45lb', collar: '0kg' });
    expect(problems.map(({ attribute, value }) => [attribute, value])).toEqual([
      ['collar', '-1kg'],
    ]);
  });

  it('names what neither the calculator nor HTML knows, and nothing else', () => {
    const { problems } = readAttributes(barLoading, {
      class: 'wide',
      'aria-label': 'Bar',
      'data-v-1a2b': '',
      _nghost: '',
      onclick: '',
      wanted: '60kg',
    });
    expect(problems.map(({ attribute, code }) => [attribute, code])).toEqual([
      ['wanted', 'element.unknown-attribute'],
    ]);
  });

  it.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    'takes every default of %s as it stands in its address',
    (_, calculator) => {
      const given = Object.fromEntries(
        Object.entries(calculator.defaults).map(([field, text]) => [attributeOf(field), text]),
      );
      expect(readAttributes(calculator, given)).toEqual({
        texts: calculator.defaults,
        problems: [],
      });
    },
  );
});
