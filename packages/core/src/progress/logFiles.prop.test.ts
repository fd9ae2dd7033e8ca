import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LoggedSet } from './LoggedSet.ts';
import { readLogCsv } from './readLogCsv.ts';
import { readLogJson } from './readLogJson.ts';
import { readTable } from './table/readTable.ts';
import { writeTable } from './table/writeTable.ts';
import { writeLogCsv } from './writeLogCsv.ts';
import { writeLogJson } from './writeLogJson.ts';

const text = fc.string({ minLength: 1, maxLength: 20, unit: 'grapheme' });
const trimmed = text.map((value) => value.trim()).filter((value) => value !== '');
const date = fc
  .integer({ min: 0, max: 30_000 })
  .map((day) => new Date(day * 864e5).toISOString().slice(0, 10));
const load = fc.oneof(
  fc.record({
    value: fc.integer({ min: -200_000, max: 400_000 }).map((grams) => grams / 1000 + 0),
    unit: fc.constant('kg' as const),
  }),
  fc.record({
    value: fc.integer({ min: -4000, max: 8000 }).map((tenths) => tenths / 10 + 0),
    unit: fc.constant('lb' as const),
  }),
);
const end = fc.oneof(
  fc.constant({ kind: 'failure' as const }),
  fc.record({ kind: fc.constant('reserve' as const), repsLeft: fc.integer({ min: 0, max: 20 }) }),
  fc.record({ kind: fc.constant('more' as const), atLeast: fc.integer({ min: 0, max: 20 }) }),
);
const set = fc.record(
  {
    date,
    exercise: trimmed,
    set: fc.integer({ min: 1, max: 20 }),
    side: fc.constantFrom('left' as const, 'right' as const),
    load,
    counts: fc.constantFrom('total', 'each-hand', 'stack', 'plates', 'added'),
    hands: fc.constantFrom(1, 2),
    bodyWeight: fc.record({
      value: fc.integer({ min: 1, max: 3000 }).map((tenths) => tenths / 10),
      unit: fc.constantFrom('kg', 'lb'),
    }),
    reps: fc.integer({ min: 0, max: 200 }),
    end,
    tempo: fc.constantFrom('3010', '4-0-1-0', '30X0'),
    restSeconds: fc.integer({ min: 0, max: 900 }),
    tags: fc.array(fc.constantFrom('travel', 'light', 'new-shoes'), { minLength: 1, maxLength: 3 }),
    equipment: trimmed,
    note: text,
  },
  { requiredKeys: ['date', 'exercise', 'set', 'load', 'counts', 'reps'] },
);
/** Help is only known on top of a body, and there it is negative. */
const log = fc.array(
  set.map(
    (one): LoggedSet => (one.load.value < 0 ? { ...one, counts: 'added' } : one) as LoggedSet,
  ),
  { maxLength: 20 },
);

describe('log files', () => {
  it('give back as CSV what was written', () => {
    fc.assert(
      fc.property(log, (sets) => {
        expect(readLogCsv(writeLogCsv(sets))).toEqual({ sets, unread: [] });
      }),
    );
  });

  it('give back as JSON what was written', () => {
    fc.assert(
      fc.property(log, (sets) => {
        expect(readLogJson(writeLogJson(sets))).toEqual({ sets, unread: [] });
      }),
    );
  });

  it('give every row back, read or unread, however a file is damaged', () => {
    fc.assert(
      fc.property(log, fc.nat(), fc.constantFrom('"', ',', '\n', 'x'), (sets, at, mark) => {
        const file = writeLogCsv(sets.map(({ note: _, ...rest }) => rest));
        const head = file.indexOf('\n') + 1;
        const place = head + (at % Math.max(1, file.length - head));
        const { sets: read, unread } = readLogCsv(file.slice(0, place) + mark + file.slice(place));
        expect(read.length + unread.length).toBeGreaterThanOrEqual(sets.length);
      }),
    );
  });
});

describe('tables', () => {
  it('are read as they were written', () => {
    const rows = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 5 }), { minLength: 1 });
    fc.assert(
      fc.property(rows, (table) => {
        const read = readTable(writeTable(table), ',');
        expect(read.broken).toEqual([]);
        expect(read.rows.map(({ cells }) => cells)).toEqual(table);
      }),
    );
  });
});
