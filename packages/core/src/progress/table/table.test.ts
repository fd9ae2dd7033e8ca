import { describe, expect, it } from 'vitest';
import { detectSeparator } from './detectSeparator.ts';
import { readTable } from './readTable.ts';

const cells = (text: string) => readTable(text, ',').rows.map((row) => row.cells);

describe('readTable', () => {
  it('reads quotes, doubled quotes, separators and line ends inside cells (RFC 4180)', () => {
    expect(cells('a,"b,c"\r\n"d ""e""","f\r\ng"\r\n')).toEqual([
      ['a', 'b,c'],
      ['d "e"', 'f\r\ng'],
    ]);
  });

  it('takes any line end, a missing last one, and no byte-order mark for a cell', () => {
    expect(cells('\uFEFFa,b\nc,d\re,f\r\ng,h')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
      ['e', 'f'],
      ['g', 'h'],
    ]);
  });

  it('keeps a quote inside a cell that does not begin with one', () => {
    expect(cells('2" bar,5')).toEqual([['2" bar', '5']]);
  });

  it('loses one line to a quote that is never closed, and says which', () => {
    const { rows, broken } = readTable('a,b\n"c,d\ne,"f\ng"\nh,i', ',');
    expect(rows.map(({ line, cells: row }) => [line, ...row])).toEqual([
      [1, 'a', 'b'],
      [3, 'e', 'f\ng'],
      [5, 'h', 'i'],
    ]);
    expect(broken).toEqual([{ line: 2, text: '"c,d', reason: 'text-after-quote' }]);
  });

  it('has no rows for no text or empty lines', () => {
    expect(cells('')).toEqual([]);
    expect(cells('\n\n')).toEqual([]);
  });
});

describe('detectSeparator', () => {
  it.each([
    ['decimal commas in every row', 'Tag;Last;Wdh\n1;102,5;5\n2;97,5;6', ';'],
    ['a comma in the header too', 'Tag;Last, kg;Wdh\n1;102,5;5\n2;97,5;6', ';'],
    ['commas, and semicolons in notes', 'd,l,n\n1,5,a; b; c\n2,6,d; e', ','],
    ['commas with quoted decimals', 'd,l,n\n1,"102,5",5\n2,"97,5",6', ','],
    ['tabs', 'd\tl\tn\n1\t102,5\t5', '\t'],
    ['strokes', 'd|l|n\n1|102,5|5', '|'],
    ['one row in ten broken', `d;l;n\n${'1;2,5;3\n'.repeat(9)}1;2,5\n`, ';'],
  ])('is not fooled by %s', (_, text, separator) => {
    expect(detectSeparator(text)).toBe(separator);
  });

  it('finds none where there is one column', () => {
    expect(detectSeparator('loads\n102.5\n97.5')).toBeUndefined();
  });
});
