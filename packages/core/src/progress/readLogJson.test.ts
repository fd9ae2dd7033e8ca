import { describe, expect, it } from 'vitest';
import { readLogJson } from './readLogJson.ts';

const set = {
  date: '2027-03-11',
  exercise: 'cable-row',
  set: 1,
  load: { value: 50, unit: 'kg' },
  counts: 'total',
  reps: 10,
};

function read(change: object) {
  return readLogJson(
    JSON.stringify({ format: 'windlass-log', version: 1, sets: [{ ...set, ...change }] }),
  );
}

describe('readLogJson', () => {
  it.each([
    ['exercise', { exercise: { id: 'cable-row' } }],
    ['note', { note: ['seat 4'] }],
    ['load', { load: { value: 50, unit: { name: 'kg' } } }],
    ['tags', { tags: ['light', { word: 'travel' }] }],
    ['load', { load: { value: { toString: 1 } } }],
    ['end', { end: { kind: ['failure'] } }],
  ])('refuses an object or a list in %s, and names the field', (field, change) => {
    const { sets, unread } = read(change);
    expect(sets).toEqual([]);
    expect(unread.flatMap(({ problems }) => problems)).toMatchObject([
      { code: 'progress.not-a-text', path: [field] },
    ]);
  });

  it('takes blanks around a text away, as in a table, and leaves the note alone', () => {
    expect(read({ exercise: ' cable-row ', tags: ['light '], note: ' seat 4' }).sets).toMatchObject(
      [{ exercise: 'cable-row', tags: ['light'], note: ' seat 4' }],
    );
    expect(read({ tags: [' '] }).sets).toEqual([set]);
  });

  it('reads a set as it was written, whatever it holds beside', () => {
    expect(read({ tags: ['light', 'travel'], colour: 'grey' })).toMatchObject({
      sets: [{ ...set, tags: ['light', 'travel'] }],
      unread: [],
    });
  });

  it.each([
    ['no JSON', '{'],
    ['a list', '[]'],
    ['nothing', 'null'],
    ['a text', '"windlass-log"'],
    ['another format', '{"format":"log","version":1,"sets":[]}'],
    ['another version', '{"format":"windlass-log","version":2,"sets":[]}'],
    ['no list of sets', '{"format":"windlass-log","version":1,"sets":{}}'],
  ])('refuses %s', (_, text) => {
    expect(readLogJson(text)).toMatchObject({
      sets: [],
      unread: [{ line: 1, text, problems: [{ code: 'progress.not-a-log-file', path: [] }] }],
    });
  });

  it('shows the beginning of a file that is no log', () => {
    expect(readLogJson(`[${' '.repeat(300)}]`).unread[0]?.text).toHaveLength(200);
  });

  it('gives a set that cannot be read back with its number in the list', () => {
    const text = JSON.stringify({
      format: 'windlass-log',
      version: 1,
      sets: [set, { ...set, reps: 'many' }, 7, set, null, [set]],
    });
    const { sets, unread } = readLogJson(text);
    expect(sets).toEqual([set, set]);
    expect(unread.map(({ line, text: entry }) => [line, entry])).toEqual([
      [2, JSON.stringify({ ...set, reps: 'many' })],
      [3, '7'],
      [5, 'null'],
      [6, JSON.stringify([set])],
    ]);
    expect(unread[0]?.problems).toMatchObject([{ code: 'progress.not-reps' }]);
    expect(unread[1]?.problems.map(({ path }) => path[0])).toEqual([
      'date',
      'exercise',
      'load',
      'reps',
    ]);
  });

  it('asks for the number of the set', () => {
    const { set: _, ...without } = set;
    const { unread } = readLogJson(
      JSON.stringify({ format: 'windlass-log', version: 1, sets: [without] }),
    );
    expect(unread[0]?.problems).toMatchObject([{ code: 'progress.no-set-number', path: ['set'] }]);
  });

  it('takes null for nothing noted, and numbers as texts', () => {
    const nothing = {
      side: null,
      bodyWeight: null,
      end: null,
      tags: null,
      note: null,
      tempo: null,
    };
    expect(read(nothing)).toEqual({ sets: [set], unread: [] });
    expect(read({ reps: '10', set: '1', load: { value: '50', unit: 'kg' } }).sets).toEqual([set]);
    expect(read({ note: 4 }).sets).toMatchObject([{ note: '4' }]);
  });

  it('reads a load however fine or large', () => {
    for (const value of [1e-7, 0.00000000001, 1234.5, 12345]) {
      expect(read({ load: { value, unit: 'kg' } }).sets).toMatchObject([{ load: { value } }]);
    }
    const bodyWeight = { value: 181.5, unit: 'lb' };
    expect(read({ bodyWeight }).sets).toMatchObject([{ bodyWeight }]);
  });

  it.each([
    ['load', { load: 50 }],
    ['load', { load: ['50'] }],
    ['body', { bodyWeight: { value: 0, unit: 'kg' } }],
  ])('refuses %s as %j', (field, change) => {
    const { sets, unread } = read(change);
    expect(sets).toEqual([]);
    expect(unread[0]?.problems[0]?.path).toEqual([field]);
  });

  it('reads what is left as a reserve or as a floor', () => {
    expect(read({ end: { kind: 'reserve', repsLeft: 2 } }).sets[0]?.end).toEqual({
      kind: 'reserve',
      repsLeft: 2,
    });
    expect(read({ end: { kind: 'more', atLeast: 3 } }).sets[0]?.end).toEqual({
      kind: 'more',
      atLeast: 3,
    });
    expect(read({ hands: 1, counts: 'each-hand' }).sets[0]?.hands).toBe(1);
  });

  it('names the field that has the wrong shape as a parameter', () => {
    expect(read({ exercise: {} }).unread[0]?.problems[0]?.params).toEqual({ field: 'exercise' });
  });
});
