import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { getAt, type Json, listAt, type Path, setAt, textAt } from './tree.ts';

const tree: Json = { gym: { plates: [{ weight: '20 kg' }, { weight: '10 kg' }] }, name: 'Helm' };
const anyTree = fc.jsonValue().map((value) => value as Json);
const anyPath: fc.Arbitrary<Path> = fc.array(
  fc.oneof(fc.nat(3), fc.constantFrom('gym', 'plates', 'name', '__proto__')),
);

describe('getAt, listAt, textAt', () => {
  it('find what is there', () => {
    expect(getAt(tree, ['gym', 'plates', 1, 'weight'])).toBe('10 kg');
    expect(listAt(tree, ['gym', 'plates'])).toHaveLength(2);
    expect(textAt(tree, ['name'])).toBe('Helm');
  });

  it.each([
    [62.5, '62.5'],
    [{ value: 45, unit: 'lb' }, '45 lb'],
    [{ code: '1-0-3-0', order: 'lift-first' }, '1-0-3-0'],
    [{ kind: 'failure' }, ''],
    [true, ''],
    [null, ''],
    [[1], ''],
  ] as [Json, string][])('show %j as "%s"', (value, text) => {
    expect(textAt({ value }, ['value'])).toBe(text);
  });

  it('never fail on a damaged tree', () => {
    fc.assert(
      fc.property(anyTree, anyPath, (damaged, path) => {
        expect(typeof textAt(damaged, path)).toBe('string');
        expect(Array.isArray(listAt(damaged, path))).toBe(true);
      }),
    );
  });
});

describe('setAt', () => {
  it('changes one place and keeps the rest the same objects', () => {
    const next = setAt(tree, ['gym', 'plates', 0, 'weight'], '25 kg');
    expect(textAt(next, ['gym', 'plates', 0, 'weight'])).toBe('25 kg');
    expect(getAt(next, ['gym', 'plates', 1])).toBe(getAt(tree, ['gym', 'plates', 1]));
    expect(textAt(tree, ['gym', 'plates', 0, 'weight'])).toBe('20 kg');
  });

  it('takes a field away, and an item out of its list', () => {
    expect(setAt(tree, ['name'], undefined)).not.toHaveProperty('name');
    expect(listAt(setAt(tree, ['gym', 'plates', 0], undefined), ['gym', 'plates'])).toEqual([
      { weight: '10 kg' },
    ]);
  });

  it('makes what is missing on the way, and adds to the end of a list', () => {
    expect(setAt({}, ['client', 'health', 'ageYears'], 41)).toEqual({
      client: { health: { ageYears: 41 } },
    });
    expect(setAt({ list: ['a'] }, ['list', 1], 'b')).toEqual({ list: ['a', 'b'] });
  });

  it('puts a value where it can be found again', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('gym', 'plates', 'name'), { minLength: 1 }), (path) => {
        expect(getAt(setAt(tree, path, 'here'), path)).toBe('here');
      }),
    );
  });
});
