import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../basis/index.ts';
import { matchSides } from './matchSides.ts';
import { readBodyWeight } from './readBodyWeight.ts';
import { readEnd } from './readEnd.ts';
import { readNumberCell } from './readNumberCell.ts';
import { readRepsCell } from './readRepsCell.ts';
import { readSide } from './readSide.ts';

const answer = <T>(outcome: Outcome<T>) => (outcome.ok ? outcome.value : outcome.problems);

describe('readNumberCell', () => {
  const read = (cell: string) => answer(readNumberCell(cell, 'rest', 1, 200));

  it.each([
    ['1', 1],
    ['200', 200],
    ['1.5', 1.5],
    ['12,25', 12.25],
  ])('reads %j', (cell, value) => {
    expect(read(cell)).toBe(value);
  });

  it.each(['0.9', '200.1', '', '-5', '5 s', 'x5', '1.', '1.5.5', '1e2'])(
    'refuses %j with the limits',
    (cell) => {
      expect(read(cell)).toMatchObject([
        {
          code: 'progress.not-a-number',
          path: ['rest'],
          params: { min: 1, max: 200 },
          received: cell,
        },
      ]);
    },
  );
});

describe('readRepsCell', () => {
  it.each([
    ['0', { kind: 'one', reps: 0 }],
    ['8', { kind: 'one', reps: 8 }],
    ['8.0', { kind: 'one', reps: 8 }],
    ['8,00', { kind: 'one', reps: 8 }],
    ['200', { kind: 'one', reps: 200 }],
    ['8/10', { kind: 'two', first: 8, second: 10 }],
    ['12 | 9', { kind: 'two', first: 12, second: 9 }],
    ['200/0', { kind: 'two', first: 200, second: 0 }],
  ])('reads %j', (cell, reps) => {
    expect(answer(readRepsCell(cell))).toEqual(reps);
  });

  it.each(['', '201', '8/201', '8.5', '-8', '8/', '8/9/10', 'x8', '8x', '0008'])(
    'refuses %j',
    (cell) => {
      expect(answer(readRepsCell(cell))).toMatchObject([
        { code: 'progress.not-reps', path: ['reps'], received: cell },
      ]);
    },
  );
});

describe('readEnd', () => {
  it.each([
    [{}, undefined],
    [{ ended: 'failure' }, { kind: 'failure' }],
    [
      { ended: 'reserve', reserve: '2' },
      { kind: 'reserve', repsLeft: 2 },
    ],
    [{ reserve: '1,5' }, { kind: 'reserve', repsLeft: 1.5 }],
    [{ reserve: '0' }, { kind: 'reserve', repsLeft: 0 }],
    [{ reserve: '50' }, { kind: 'reserve', repsLeft: 50 }],
    [
      { ended: 'more', reserve: '3' },
      { kind: 'more', atLeast: 3 },
    ],
    // ten is failure, each point below it a repetition; below 5 nobody counts
    [{ effort: '10' }, { kind: 'reserve', repsLeft: 0 }],
    [{ effort: '8.5' }, { kind: 'reserve', repsLeft: 1.5 }],
    [{ effort: '5' }, { kind: 'reserve', repsLeft: 5 }],
    [{ effort: '4.5' }, { kind: 'more', atLeast: 5 }],
    [{ effort: '0' }, { kind: 'more', atLeast: 5 }],
  ])('reads %j', (cells, end) => {
    expect(answer(readEnd(cells))).toEqual(end);
  });

  it.each([
    [{ ended: 'reserve' }, 'progress.unknown-end', 'ended', 'reserve'],
    [{ ended: 'tired' }, 'progress.unknown-end', 'ended', 'tired'],
    [{ reserve: '51' }, 'progress.not-a-number', 'reserve', '51'],
    [{ effort: '11' }, 'progress.not-a-number', 'effort', '11'],
  ])('refuses %j', (cells, code, field, received) => {
    expect(answer(readEnd(cells))).toMatchObject([{ code, path: [field], received }]);
  });
});

describe('readSide', () => {
  it.each([
    ['L', 'left'],
    ['left', 'left'],
    ['r', 'right'],
    ['Right', 'right'],
  ])('reads %j', (cell, side) => {
    expect(answer(readSide(cell))).toBe(side);
  });

  it.each(['both', '__proto__', 'constructor'])('refuses %j', (cell) => {
    expect(answer(readSide(cell))).toMatchObject([
      { code: 'progress.unknown-side', path: ['side'], received: cell },
    ]);
  });
});

describe('readBodyWeight', () => {
  const read = (cell: string, decimalMark?: ',' | '.') =>
    answer(
      readBodyWeight(cell, {
        columns: { date: 0, exercise: 0, load: 0, reps: 0 },
        unit: 'lb',
        ...(decimalMark && { decimalMark }),
      }),
    );

  it('takes the unit of the mapping where the cell says none', () => {
    expect(read('180')).toEqual({ value: 180, unit: 'lb' });
    expect(read('82 kg')).toEqual({ value: 82, unit: 'kg' });
  });

  it('trusts the decimal mark that is known even where three digits follow it', () => {
    expect(read('81,125 kg', ',')).toEqual({ value: 81.125, unit: 'kg' });
    expect(read('81.125 kg', '.')).toEqual({ value: 81.125, unit: 'kg' });
    expect(read('81,125 kg', '.')).toMatchObject([{ code: 'load.ambiguous-mark' }]);
    expect(read('81.125 kg')).toMatchObject([{ code: 'load.ambiguous-mark' }]);
  });

  it.each([
    ['0', 'progress.no-body-weight', '0'],
    ['-80', 'progress.no-body-weight', '-80'],
    ['heavy', 'load.not-a-load', 'heavy'],
  ])('refuses %j', (cell, code, received) => {
    expect(read(cell)).toMatchObject([{ code, path: ['body'], received }]);
  });
});

describe('matchSides', () => {
  const load = { load: { value: 30, unit: 'kg' }, counts: 'each-hand' } as const;
  const [left, right] = [
    { ...load, side: 'left' },
    { ...load, side: 'right' },
  ] as const;
  const one = { kind: 'one', reps: 8 } as const;
  const two = { kind: 'two', first: 8, second: 10 } as const;

  it('gives each side its count in the order written, or one set its side', () => {
    expect(answer(matchSides([left, right], two, undefined, '8/10'))).toEqual([
      { ...left, reps: 8 },
      { ...right, reps: 10 },
    ]);
    expect(answer(matchSides([load], one, undefined, '8'))).toStrictEqual([{ ...load, reps: 8 }]);
    expect(answer(matchSides([load], one, 'right', '8'))).toEqual([{ ...right, reps: 8 }]);
  });

  it.each([
    [[load], two],
    [[left, right], one],
  ] as const)('never guesses what belongs to which side', (loads, reps) => {
    expect(answer(matchSides(loads, reps, undefined, 'cell'))).toMatchObject([
      { code: 'progress.sides-unclear', path: ['reps'], received: 'cell' },
    ]);
  });
});
