import { describe, expect, it } from 'vitest';
import gym from '../../../../examples/boathouse/gym.json';
import { newGym } from '../../people/newGym.ts';
import { newRecord } from '../../storage/newRecord.ts';
import { examples } from '../state/examples.ts';
import { fileOf } from '../state/fileOf.ts';
import { readDraft } from '../state/readDraft.ts';
import { getAt, type Json, listAt, setAt, textAt } from '../state/tree.ts';
import { draftForClient, draftForGym } from './draftFor.ts';
import { liftsIn } from './liftsIn.ts';
import { savedId, withSavedId } from './SavedIds.ts';
import { sameParts } from './sameParts.ts';
import { withLog, withoutLog } from './withLog.ts';

const pullDay: Json = examples['pull-day'];
const set = (date: string, load = '22 kg'): Json => ({
  date,
  exercise: 'one-arm-dumbbell-row',
  equipment: 'dumbbells',
  load,
  reps: 11,
  end: 'failure',
});
const client: Json = { name: 'Helm', sets: [set('2027-03-01')] };

describe('which kept parts a draft came from', () => {
  it('is known by the draft and stands in no file', () => {
    const draft = withSavedId(withSavedId(pullDay, 'client', 'a'), 'gym', 'b');
    expect([savedId(draft, 'client'), savedId(draft, 'gym')]).toEqual(['a', 'b']);
    expect(fileOf(draft)).toEqual(fileOf(pullDay));
    expect(readDraft(draft)).toEqual(readDraft(pullDay));
    const without = withSavedId(withSavedId(draft, 'client', undefined), 'gym', undefined);
    expect(without).toEqual(pullDay);
    expect(savedId(pullDay, 'gym')).toBe('');
  });
});

describe('withLog', () => {
  const log = [set('2027-03-01'), set('2027-03-08')];

  it('takes in what the log has and the person not, and gives it back', () => {
    const merged = withLog(client, log);
    expect(listAt(merged, ['sets'])).toEqual(log);
    expect(withLog(merged, log)).toEqual(merged);
    expect(withoutLog(merged, log)).toEqual({ name: 'Helm', sets: [] });
  });

  it('keeps sets that are known beside the log', () => {
    const added = setAt(withLog(client, log), ['sets', 2], set('2027-03-10'));
    expect(withoutLog(added, log)).toEqual({ name: 'Helm', sets: [set('2027-03-10')] });
  });
});

describe('sameParts', () => {
  it('takes another order of sets for the same, and what was typed for the number it is', () => {
    const a = { name: 'Helm', sets: [set('2027-03-01'), set('2027-03-08')] };
    const b = { name: 'Helm', sets: [set('2027-03-08'), set('2027-03-01')] };
    expect(sameParts(a, b)).toBe(true);
    expect(sameParts(a, { ...b, name: 'Lookout' })).toBe(false);
    expect(sameParts({ plates: [{ pieces: '4' }] }, { plates: [{ pieces: 4 }] })).toBe(true);
  });
});

describe('draftForClient', () => {
  const saved = newRecord('a', { client });

  it('is of today, with the log, and of the last day of a log that goes beyond it', () => {
    const draft = draftForClient(pullDay, saved, [set('2027-03-08')], '2027-03-20');
    expect(savedId(draft, 'client')).toBe('a');
    expect(listAt(draft, ['client', 'sets'])).toHaveLength(2);
    expect(textAt(draft, ['intent', 'date'])).toBe('2027-03-20');
    const early = draftForClient(pullDay, saved, [set('2027-03-08')], '2026-01-01');
    expect(textAt(early, ['intent', 'date'])).toBe('2027-03-08');
  });
});

describe('draftForGym', () => {
  it('leaves the lifts where the gym has their equipment', () => {
    const draft = draftForGym(pullDay, newRecord('b', { gym }));
    expect(draft).toEqual(withSavedId(pullDay, 'gym', 'b'));
  });

  it('plans a pull that a gym with other equipment can load', () => {
    const draft = draftForGym(pullDay, newGym('b', 'Shed'));
    expect(listAt(draft, ['intent', 'lifts'])).toMatchObject([{ equipment: 'bar' }]);
    expect(readDraft(draft).ok).toBe(true);
  });

  it('keeps the lifts that are left, and all where the gym cannot be read', () => {
    const items = listAt(getAt(pullDay, ['gym']) ?? null, ['equipment']);
    const only = items.filter((item) => textAt(item, ['id']) === 'dumbbells');
    const draft = liftsIn(setAt(pullDay, ['gym', 'equipment'], only));
    expect(listAt(draft, ['intent', 'lifts'])).toMatchObject([{ equipment: 'dumbbells' }]);
    const broken = setAt(pullDay, ['gym', 'equipment'], []);
    expect(liftsIn(broken)).toBe(broken);
  });
});
