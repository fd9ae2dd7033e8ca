import { describe, expect, it } from 'vitest';
import { detectSeparator } from './detectSeparator.ts';
import { readTable } from './readTable.ts';
import { writeTable } from './writeTable.ts';

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

  it('keeps the text of a row and the line that it begins on, after rows of several lines', () => {
    expect(readTable('"a\r\nb",c\r\n\n"d\ne\rf",g\rh,i', ',').rows).toEqual([
      { line: 1, text: '"a\r\nb",c', cells: ['a\r\nb', 'c'] },
      { line: 4, text: '"d\ne\rf",g', cells: ['d\ne\rf', 'g'] },
      { line: 7, text: 'h,i', cells: ['h', 'i'] },
    ]);
  });

  it('tells a quote that is never closed from text after one, each with its own line', () => {
    expect(readTable('a,b\n"c" x,d\r\n"e,f', ',')).toEqual({
      rows: [{ line: 1, text: 'a,b', cells: ['a', 'b'] }],
      broken: [
        { line: 2, text: '"c" x,d', reason: 'text-after-quote' },
        { line: 3, text: '"e,f', reason: 'quote-not-closed' },
      ],
    });
    expect(readTable('a\n\nb', ',').rows.map(({ line }) => line)).toEqual([1, 3]);
    expect(readTable('"a\rb,c', ',')).toEqual({
      rows: [{ line: 2, text: 'b,c', cells: ['b', 'c'] }],
      broken: [{ line: 1, text: '"a', reason: 'quote-not-closed' }],
    });
  });

  it('has a cell for every separator, and one after the last', () => {
    expect(cells(',a,,')).toEqual([['', 'a', '', '']]);
    expect(cells('"",""')).toEqual([['', '']]);
    expect(readTable('a;"b;c";d', ';').rows[0]?.cells).toEqual(['a', 'b;c', 'd']);
    expect(cells('a\uFEFF,b')).toEqual([['a\uFEFF', 'b']]);
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

  it('takes the one with most cells of those that hold rows together alike', () => {
    expect(detectSeparator('a,b;c;d\n1,2;3;4')).toBe(';');
    expect(detectSeparator('a;b,c,d\n1;2,3,4')).toBe(',');
    // by commas two rows of three are like the header, by semicolons all of them
    expect(detectSeparator('a,b,c;d\n1,2,3;4\n1;2')).toBe(';');
    // a row in twenty does not outweigh a cell more, nor does exactly one in ten
    const most = `a,b;c;d\n${'1,2;3;4\n'.repeat(19)}`;
    expect(detectSeparator(`${most}1,2;3`)).toBe(';');
    const ten = (row: string, odd: string) => `${`${row}\n`.repeat(8)}${odd}\n5`;
    expect(detectSeparator(ten('1,2;3;4', '1,2;3'))).toBe(';');
    expect(detectSeparator(ten('1;2,3,4', '1;2,3'))).toBe(';');
    // equally many cells in as many rows: a comma is the last choice
    expect(detectSeparator('a;b,c\n1;2,3')).toBe(';');
    expect(detectSeparator('a|b,c\n1|2,3')).toBe('|');
    expect(detectSeparator('a;b\tc\n1;2\t3')).toBe(';');
  });

  it('needs a header of two cells and looks at no more than a hundred lines', () => {
    expect(detectSeparator('a;b')).toBe(';');
    expect(detectSeparator('')).toBeUndefined();
    const lines = (count: number, row: string) => `${row}\n`.repeat(count);
    // by semicolons 60 of the first 100 rows are like the header, by commas 100 of them
    const text = `a,b;c;d\n${lines(59, '1,2;3;4')}${lines(40, '1,2;3')}`;
    expect(detectSeparator(text)).toBe(',');
    // what comes after does not count: 940 more rows would make it nearly all
    expect(detectSeparator(`${text}${lines(940, '1,2;3;4')}`)).toBe(',');
  });

  it('finds none where there is one column', () => {
    expect(detectSeparator('loads\n102.5\n97.5')).toBeUndefined();
  });
});

describe('writeTable', () => {
  it('quotes only what has to be', () => {
    expect(writeTable([['a b', ' a', 'b ', 'c"d', '-5']])).toBe('a b," a","b ","c""d",-5\r\n');
  });
});
