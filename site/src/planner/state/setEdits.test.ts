import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { readDraft } from './readDraft.ts';
import { addSet, setsOf, setsOfOtherLifts } from './setEdits.ts';
import { getAt, listAt, setAt } from './tree.ts';

const draft = examples['pull-day'];

describe('setsOf', () => {
  it('tells sets apart by exercise and equipment', () => {
    const rows = setsOf(draft, 'one-arm-dumbbell-row', 'dumbbells');
    expect(rows.map((place) => getAt(draft, ['client', 'sets', place, 'load']))).toEqual([
      '22 kg',
      '24 kg',
    ]);
    expect(setsOf(draft, 'one-arm-dumbbell-row', 'station')).toEqual([]);
  });
});

describe('setsOfOtherLifts', () => {
  it('is empty while every set belongs to a lift, and holds those of a lift that was removed', () => {
    expect(setsOfOtherLifts(draft)).toEqual([]);
    const fewer = setAt(draft, ['intent', 'lifts', 2], undefined);
    expect(setsOfOtherLifts(fewer)).toEqual(setsOf(draft, 'one-arm-dumbbell-row', 'dumbbells'));
  });
});

describe('addSet', () => {
  it('begins as the last set of the lift', () => {
    const next = addSet(draft, 'one-arm-dumbbell-row', 'dumbbells');
    const last = setsOf(draft, 'one-arm-dumbbell-row', 'dumbbells').at(-1) ?? -1;
    expect(listAt(next, ['client', 'sets']).at(-1)).toEqual(getAt(draft, ['client', 'sets', last]));
    expect(readDraft(next).ok).toBe(true);
  });

  it('asks for load and reps where no set is known', () => {
    const read = readDraft(addSet({ ...draft }, 'chin-up', 'station'));
    expect(read.ok ? [] : read.problems.map(({ path }) => path.at(-1))).toEqual(['load', 'reps']);
  });
});
