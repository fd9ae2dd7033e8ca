import { describe, expect, it } from 'vitest';
import { previewImport } from './previewImport.ts';

/** A log as people type it: byte-order mark, semicolons, decimal commas, mixed units, help, sides. */
const typed = [
  '\uFEFFDatum;Uebung;Last;Wdh',
  '02.03.2026;Kniebeuge;102,5;5',
  '02.03.2026;Klimmzug;KG+10;6',
  '04.03.2026;Klimmzug (Maschine);-20 kg;8',
  '04.03.2026;Kurzhantel druecken;2x22,5;10',
  '06.03.2026;Bankdruecken;135lb;5',
  '06.03.2026;Rudern einarmig;L 30 / R 30;8/10',
].join('\n');

describe('previewImport', () => {
  it('finds the semicolon although commas are more frequent, and asks what cells do not say', () => {
    const preview = previewImport(typed);
    expect(preview.separator).toBe(';');
    expect(preview.rows).toBe(6);
    expect(preview.columns[0]?.header).toBe('Datum');
    expect(preview.suggestion).toEqual({ date: 0, exercise: 1, load: 2, reps: 3 });
    expect(preview.questions).toEqual(['date-order', 'unit']);
  });

  it('leaves two columns of counts to the person', () => {
    const preview = previewImport('d,e,a,b\n2026-03-02,Row,60,8\n2026-03-03,Row,60,9');
    expect(preview.suggestion).toStrictEqual({ date: 0, exercise: 1 });
    expect(preview.questions).toEqual(['columns']);
  });

  it('has no columns for no text', () => {
    expect(previewImport('')).toMatchObject({ rows: 0, columns: [], questions: ['columns'] });
  });

  const looks = (...cells: readonly string[]) =>
    previewImport(`x;y\n${cells.map((cell) => `${cell};`).join('\n')}`, ';').columns[0]?.looksLike;

  it('takes a column for what four in five of its cells could be', () => {
    expect(looks('13.3.2026')).toBe('date');
    expect(looks('2.3.2026', '3.3.26', '2026-03-04', '12/31/2026', 'later')).toBe('date');
    expect(looks('2.3.2026', '3.3.26', '2026-03-04', 'later')).toBe('text');
    expect(looks('8', '9', '10', '8/10', '8.5')).toBe('count');
    expect(looks('8', '9', '10', '8.5')).toBe('load');
    expect(looks('60', '62.5 kg', 'BW+10', '2x20', 'light')).toBe('load');
    expect(looks('60 kg', '62.5 kg', 'BW+10', 'light')).toBe('text');
    expect(looks('', ' ')).toBe('empty');
    expect(looks()).toBe('empty');
  });

  it('leaves empty cells out of it, and shows three that are not', () => {
    const preview = previewImport(' Last ;n\n;1\n 60 ;2\n65;3\n;4\n70;5\n75;6', ';');
    expect(preview.columns[0]).toEqual({
      column: 0,
      header: 'Last',
      samples: ['60', '65', '70'],
      looksLike: 'count',
    });
    expect(preview.columns[1]).toMatchObject({ column: 1, header: 'n' });
  });

  it('judges by the first 500 rows', () => {
    const rows = (count: number, cell: string) => Array.from({ length: count }, () => cell);
    expect(looks(...rows(400, '60 kg'), ...rows(100, 'light'), ...rows(400, 'light'))).toBe('load');
    expect(looks(...rows(399, '60 kg'), ...rows(101, 'light'))).toBe('text');
  });

  it('takes names that come again for the exercise, of two columns of text', () => {
    const preview = previewImport(
      'd;note;lift;l;r\n2026-03-02;seat 4;Row;60 kg;8\n2026-03-02;new shoes;Row;60 kg;7',
    );
    expect(preview.suggestion).toEqual({ date: 0, exercise: 2, load: 3, reps: 4 });
    expect(preview.questions).toEqual([]);
    const both = previewImport('d;a;b;l;r\n2026-03-02;x;y;60 kg;8\n2026-03-02;x;y;60 kg;8');
    expect(both.suggestion).toStrictEqual({ date: 0, load: 3, reps: 4 });
    expect(previewImport('a;b\n;').suggestion).toStrictEqual({});
    expect(both.questions).toEqual(['columns']);
  });

  it('asks for short years where any has two digits', () => {
    const questions = (...dates: readonly string[]) =>
      previewImport(`d;e;l;r\n${dates.map((date) => `${date};Row;60 kg;8`).join('\n')}`).questions;
    expect(questions('2.3.2026')).toEqual(['date-order']);
    expect(questions('2.3.26', '3.3.26')).toEqual(['date-order', 'short-years']);
    expect(questions('02/03/26')).toEqual(['date-order', 'short-years']);
    expect(questions('2026-03-02')).toEqual([]);
    expect(questions('2. 3. 26')).toEqual(['date-order', 'short-years']);
    expect(questions('2.3. 26')).toEqual(['date-order', 'short-years']);
    expect(questions('2. 3.26')).toEqual(['date-order', 'short-years']);
    expect(questions('2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05', 'later')).toEqual([]);
    expect(previewImport('a;b\n1;\n2').columns[1]?.looksLike).toBe('empty');
    expect(questions('26-03-02')).toEqual(['date-order', 'short-years']);
  });

  it.each([
    ['60kg', false],
    ['60 KILO', false],
    ['135 lb', false],
    ['135 pounds', false],
    ['45#', false],
    ['60.5', true],
  ])('asks for the unit of %j: %s', (load, isAsked) => {
    const { questions } = previewImport(`d;e;l;r\n2026-03-02;Row;${load};8`);
    expect(questions).toEqual(isAsked ? ['unit'] : []);
  });

  it('goes by the separator that is given, and shows rows whose quotes do not add up', () => {
    const preview = previewImport('a,b;c\n1,"2;3', ',');
    expect(preview).toMatchObject({ separator: ',', rows: 0 });
    expect(preview.columns.map(({ header }) => header)).toEqual(['a', 'b;c']);
    expect(preview.broken).toMatchObject([{ line: 2, reason: 'quote-not-closed' }]);
    const single = previewImport('loads\n60.5\n70');
    expect(single.separator).toBe(',');
    expect(single.columns).toHaveLength(1);
  });
});
