import type { SavedClient, SavedLists } from '@windlass/core/schema';
import { describe, expect, it } from 'vitest';
import { compareBackup } from './compareBackup.ts';
import { differingParts } from './contentOf.ts';
import { takenLists } from './takenLists.ts';

const none: SavedLists = { clients: [], gyms: [], sessions: [], running: [] };

function client(name: string, revision: string, past: readonly string[] = []): SavedClient {
  const changedAt = '2027-03-15T18:30:00Z';
  return { id: 'a', revision, past, changedAt, client: { name, alone: true } };
}

/** How the file's record stands to the one here. */
function state(here: SavedClient, file: SavedClient) {
  const lists = { ...none, clients: [here] };
  return compareBackup({ lists, broken: [] }, { ...none, clients: [file] })[0]?.state;
}

describe('compareBackup', () => {
  it.each([
    ['same', client('Helm', 'r1'), client('Helm', 'r1')],
    ['same', client('Helm', 'r1'), client('Helm', 'r9', ['other'])],
    ['file-goes-on', client('Helm', 'r1'), client('Lookout', 'r3', ['r1', 'r2'])],
    ['here-goes-on', client('Helm', 'r3', ['r1', 'r2']), client('Lookout', 'r2', ['r1'])],
    ['conflict', client('Helm', 'r2', ['r1']), client('Lookout', 'r3', ['r1'])],
  ])('says %s', (wanted, here, file) => {
    expect(state(here, file)).toBe(wanted);
  });

  it('takes another order of fields for the same', () => {
    const here = client('Helm', 'r1');
    expect(state(here, { ...here, client: { alone: true, name: 'Helm' } })).toBe('same');
  });

  it('says what is not here, and what mends a record that cannot be read', () => {
    const broken = { kind: 'clients', id: 'a', text: '{"id":"a","revision":"r0"}', problems: [] };
    const file = { ...none, clients: [client('Helm', 'r1')] };
    expect(compareBackup({ lists: none, broken: [] }, file)[0]?.state).toBe('added');
    const mends = compareBackup({ lists: none, broken: [{ ...broken, kind: 'clients' }] }, file);
    expect(mends).toMatchObject([{ state: 'mends', revision: 'r0' }]);
  });

  it('compares running sessions by what happened in them', () => {
    const run = (...events: string[]) => ({
      ...none,
      running: [{ id: 'r', startedAt: '2027-03-15T18:30:00Z', plan: {}, events }],
    });
    const stateOf = (here: SavedLists, file: SavedLists) =>
      compareBackup({ lists: here, broken: [] }, file)[0]?.state;
    expect(stateOf(run('a'), run('a', 'b'))).toBe('file-goes-on');
    expect(stateOf(run('a', 'b'), run('a'))).toBe('here-goes-on');
    expect(stateOf(run('a', 'b'), run('a', 'c'))).toBe('conflict');
    expect(stateOf(run('a', 'b'), run('a', 'b'))).toBe('same');
  });
});

describe('differingParts', () => {
  it('names the parts of a person that differ, one that is missing too', () => {
    const here = client('Helm', 'r1');
    const file = { ...client('Lookout', 'r2'), gymId: 'b' };
    expect(differingParts(here, file)).toEqual(['name', 'gymId']);
    expect(differingParts(here, { ...here, revision: 'r2' })).toEqual([]);
  });
});

describe('takenLists', () => {
  it('holds what is chosen, and the revisions it was compared with', () => {
    const here = { lists: { ...none, clients: [client('Helm', 'r1')] }, broken: [] };
    const file = {
      ...none,
      clients: [client('Lookout', 'r2', ['r1']), { ...client('New', 'n1'), id: 'n' }],
    };
    const items = compareBackup(here, file);
    expect(takenLists(items, () => false)).toMatchObject({ lists: none, count: 0 });
    const all = takenLists(items, () => true);
    expect(all.lists).toEqual(file);
    expect([...all.expected]).toEqual([['a', 'r1']]);
  });
});
