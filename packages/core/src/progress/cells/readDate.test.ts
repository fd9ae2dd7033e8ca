import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDate } from './readDate.ts';

const code = (cell: string, reading: Parameters<typeof readDate>[1] = {}) => {
  const read = readDate(cell, reading);
  return read.ok ? read.value : read.problems.map((problem) => problem.code).join();
};

describe('readDate', () => {
  it('reads every date in the order that is asked for, with any mark, padded or not', () => {
    fc.assert(
      fc.property(
        fc.date({
          min: new Date('1900-01-01T00:00:00Z'),
          max: new Date('2199-12-31T00:00:00Z'),
          noInvalidDate: true,
        }),
        fc.constantFrom('.', '/', '-', '. ', ' '),
        fc.boolean(),
        fc.boolean(),
        (date, mark, isPadded, isShort) => {
          const iso = date.toISOString().slice(0, 10);
          const [year = '', month = '', day = ''] = iso.split('-');
          const written = (part: string) => (isPadded ? part : String(Number(part)));
          const shortYear = isShort ? year.slice(2) : year;
          const shortYearsFrom = 100 * Math.floor(Number(year) / 100);
          const parts = [written(day), written(month), shortYear];
          const orders = {
            'day-first': parts,
            'month-first': [parts[1], parts[0], parts[2]],
            'year-first': parts.toReversed(),
          } as const;
          for (const dateOrder of ['day-first', 'month-first', 'year-first'] as const) {
            const cell = orders[dateOrder].join(mark);
            if (/^\d{4}-\d\d-\d\d$/.test(cell)) continue;
            expect(readDate(cell, { dateOrder, shortYearsFrom })).toEqual({ ok: true, value: iso });
          }
          expect(readDate(iso, {})).toEqual({ ok: true, value: iso });
        },
      ),
    );
  });

  it.each([
    ['2026-03-02T18:30', '2026-03-02'],
    ['2026-03-02 18:30:15+01:00', '2026-03-02'],
    ['2026-03-02 evening', 'progress.not-a-date'],
    ['2026-03-02T18', 'progress.not-a-date'],
    ['2026-03-02T18:3', 'progress.not-a-date'],
    ['0987-03-02', '0987-03-02'],
    ['0098-03-02', 'progress.no-such-date'],
    ['12026-03-02', 'progress.not-a-date'],
    ['', 'progress.not-a-date'],
    ['soon', 'progress.not-a-date'],
    ['2026-3-2', 'progress.date-order'],
    ['2.3.2026.', 'progress.date-order'],
    ['x2.3.2026', 'progress.not-a-date'],
    ['2.3.2026x', 'progress.not-a-date'],
    ['2.3.2026..', 'progress.not-a-date'],
    ['2026-02-29', 'progress.no-such-date'],
    ['2028-02-29', '2028-02-29'],
    ['2026-00-10', 'progress.no-such-date'],
  ])('takes %j for %s without an order', (cell, expected) => {
    expect(code(cell)).toBe(expected);
  });

  it('takes a point behind the year, and no year of three digits', () => {
    expect(code('2.3.2026.', { dateOrder: 'day-first' })).toBe('2026-03-02');
    expect(code('2.3.026', { dateOrder: 'day-first', shortYearsFrom: 2000 })).toBe(
      'progress.short-year',
    );
    expect(code('2.3.26', { dateOrder: 'day-first' })).toBe('progress.short-year');
  });

  it('counts two-digit years from the year that is given', () => {
    const from = (cell: string) => code(cell, { dateOrder: 'day-first', shortYearsFrom: 1970 });
    expect(from('2.3.69')).toBe('2069-03-02');
    expect(from('2.3.70')).toBe('1970-03-02');
    expect(from('2.3.99')).toBe('1999-03-02');
  });

  it('names the column and gives the cell back', () => {
    const read = readDate('31.02.2026', { dateOrder: 'day-first' });
    expect(read.ok ? [] : read.problems).toMatchObject([
      { code: 'progress.no-such-date', path: ['date'], received: '31.02.2026' },
    ]);
  });
});
