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
});
