import { describe, expect, it } from 'vitest';
import { calculators } from '../calculators.ts';
import { findCalculator } from '../findCalculator.ts';
import { fieldAttributes } from './fieldAttributes.ts';

const barLoading = findCalculator('bar-loading');

describe('fieldAttributes', () => {
  it('finds fields whatever the capitals, and passes over the rest', () => {
    if (!barLoading) throw new Error('no bar-loading');
    expect(fieldAttributes(barLoading, ['class', 'target', 'bar-weight', 'barweight'])).toEqual([
      { field: 'target', attribute: 'target' },
      { field: 'barWeight', attribute: 'bar-weight' },
      { field: 'barWeight', attribute: 'barweight' },
    ]);
  });

  it.each(calculators.map(({ id, fields }) => [id, Object.keys(fields)] as const))(
    '%s has no field that HTML or the element means otherwise',
    (_, names) => {
      const taken = [
        'class',
        'id',
        'style',
        'title',
        'lang',
        'dir',
        'hidden',
        'slot',
        'part',
        'is',
      ];
      const own = ['calculator', 'query', 'tools'];
      expect(names.filter((name) => [...taken, ...own].includes(name.toLowerCase()))).toEqual([]);
    },
  );
});
