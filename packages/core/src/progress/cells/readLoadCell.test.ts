import { describe, expect, it } from 'vitest';
import { readLoadCell } from './readLoadCell.ts';
import { readLoads } from './readLoads.ts';

const kilos = (value: number) => ({ value, unit: 'kg' });
const read = (cell: string, counts: 'total' | 'stack' = 'total') => {
  const outcome = readLoadCell(cell, { unit: 'kg', counts, locale: 'en' });
  return outcome.ok ? outcome.value : outcome.problems;
};

describe('readLoadCell', () => {
  it.each([
    ['40', 'stack', [{ load: kilos(40), counts: 'stack' }]],
    ['2x22.5', 'total', [{ load: kilos(22.5), counts: 'each-hand', hands: 2 }]],
    ['1 × 22.5 kg', 'total', [{ load: kilos(22.5), counts: 'each-hand', hands: 1 }]],
    ['2 * 50 lb', 'total', [{ load: { value: 50, unit: 'lb' }, counts: 'each-hand', hands: 2 }]],
    ['0', 'total', [{ load: kilos(0), counts: 'total' }]],
    ['+10', 'stack', [{ load: kilos(10), counts: 'added' }]],
    ['-20 kg', 'stack', [{ load: kilos(-20), counts: 'added' }]],
    ['BW', 'total', [{ load: kilos(0), counts: 'added' }]],
    ['body weight + 10', 'total', [{ load: kilos(10), counts: 'added' }]],
    ['Körpergewicht', 'total', [{ load: kilos(0), counts: 'added' }]],
    ['PdC-5', 'total', [{ load: kilos(-5), counts: 'added' }]],
    ['KG + 2.5', 'total', [{ load: kilos(2.5), counts: 'added' }]],
  ] as const)('reads %j (%s)', (cell, counts, loads) => {
    expect(read(cell, counts)).toEqual(loads);
  });

  it.each(['L 30 / R 32.5', 'left: 30 | right: 32.5', 'l 30/r 32.5', 'L:30 / R:32.5'])(
    'reads both sides of %j',
    (cell) => {
      expect(read(cell)).toEqual([
        { load: kilos(30), counts: 'each-hand', hands: 1, side: 'left' },
        { load: kilos(32.5), counts: 'each-hand', hands: 1, side: 'right' },
      ]);
    },
  );

  it('keeps the order in which the sides were written', () => {
    expect(read('R 30 / L 32.5')).toMatchObject([{ side: 'right' }, { side: 'left' }]);
  });

  it.each([
    ['L 30 / left 32.5', 'progress.same-side-twice'],
    ['L heavy / R 30', 'load.not-a-load'],
    ['L 30 / R heavy', 'load.not-a-load'],
    ['L -5 / R 30', 'progress.negative-load'],
    ['2x-5', 'progress.negative-load'],
    ['3x20', 'load.unknown-unit'],
    ['kg', 'load.not-a-load'],
    ['BW heavy', 'load.not-a-load'],
    ['x BW', 'load.not-a-load'],
    ['x L 30 / R 30', 'load.not-a-load'],
    ['L 30 / R 30\n5', 'load.not-a-load'],
    ['L-5/R-5', 'progress.negative-load'],
    ['BW 2x20', 'load.not-a-load'],
    ['2x20\n5', 'load.unknown-unit'],
    ['~-5', 'progress.negative-load'],
  ])('refuses %j: %s', (cell, code) => {
    expect(read(cell)).toMatchObject([{ code, path: ['load'] }]);
  });

  it('gives back what was below 0', () => {
    expect(read('2x-5')).toMatchObject([{ received: '-5' }]);
  });
});

describe('readLoads', () => {
  const loads = (cells: Parameters<typeof readLoads>[0], more: object = {}) => {
    const outcome = readLoads(cells, {
      columns: { date: 0, exercise: 0, load: 0, reps: 0 },
      unit: 'kg',
      ...more,
    });
    return outcome.ok ? outcome.value : outcome.problems;
  };

  it('takes unit and count from their own cells, otherwise from the mapping', () => {
    expect(loads({ load: '40', unit: 'lb', counts: 'stack' })).toEqual([
      { load: { value: 40, unit: 'lb' }, counts: 'stack' },
    ]);
    expect(loads({ load: '40' }, { counts: 'plates' })).toEqual([
      { load: kilos(40), counts: 'plates' },
    ]);
    expect(loads({ load: '40' })).toEqual([{ load: kilos(40), counts: 'total' }]);
  });

  it.each(['total', 'each-hand', 'stack', 'plates', 'added'])('knows the count %s', (counts) => {
    expect(loads({ load: '40', counts })).toMatchObject([{ counts }]);
  });

  it('trusts the decimal mark that is known even where three digits follow it', () => {
    expect(loads({ load: '1,234' }, { decimalMark: ',' })).toMatchObject([{ load: kilos(1.234) }]);
    expect(loads({ load: '1.234' }, { decimalMark: '.' })).toMatchObject([{ load: kilos(1.234) }]);
    for (const load of ['1,234', '1.234']) {
      expect(loads({ load })).toMatchObject([{ code: 'load.ambiguous-mark' }]);
    }
  });

  it('names the cell that is wrong', () => {
    expect(loads({ load: '40', unit: 'stone' })).toMatchObject([
      { path: ['unit'], received: 'stone' },
    ]);
    expect(loads({ load: '40', counts: 'both' })).toMatchObject([
      { code: 'progress.unknown-counts', path: ['counts'], received: 'both' },
    ]);
    expect(loads({})).toMatchObject([{ code: 'load.empty', path: ['load'] }]);
  });
});
