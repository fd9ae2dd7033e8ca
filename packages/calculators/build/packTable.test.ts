import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packTable, unpackSource } from './packTable.ts';

const unpacked = (expression: string): unknown =>
  new Function(`${unpackSource}\nreturn ${expression};`)();
const packed = (rows: readonly object[], unread: readonly string[] = []) =>
  packTable(rows, new Set(unread), JSON.stringify);

const cell = fc.oneof(fc.string({ maxLength: 3 }), fc.integer(), fc.boolean(), fc.array(fc.nat(9)));
const row = fc.dictionary(fc.constantFrom('id', 'name', 'holds', '"\\'), cell);

describe('packTable', () => {
  it('gives the rows again, with as many values as there may be', () => {
    fc.assert(
      fc.property(fc.array(row, { maxLength: 300 }), (rows) => {
        expect(unpacked(packed(rows))).toEqual(rows.map((one) => ({ ...one })));
      }),
      { numRuns: 60 },
    );
    const many = Array.from({ length: 400 }, (_, id) => ({
      id,
      even: id % 2 === 0,
      big: id > 200,
    }));
    expect(unpacked(packed(many))).toEqual(many);
  });

  it('keeps a value apart from none, where there are more values than there are signs', () => {
    const many = Array.from({ length: 200 }, (_, id) => (id % 2 ? { id } : { other: id }));
    expect(unpacked(packed(many))).toEqual(many);
  });

  it('leaves out the columns that nobody reads', () => {
    expect(unpacked(packed([{ id: 'a', holds: [1] }], ['holds']))).toEqual([{ id: 'a' }]);
  });
});
