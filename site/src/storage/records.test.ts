import { beforeEach, describe, expect, it, vi } from 'vitest';
import { onChange } from './announceChange.ts';
import { briefLog } from './briefLog.ts';
import { eraseAll } from './eraseAll.ts';
import { findRecord } from './findRecord.ts';
import { keepRecord } from './keepRecord.ts';
import { listRecords } from './listRecords.ts';
import { listSessionsOf } from './listSessionsOf.ts';
import { readAll } from './readAll.ts';
import { removeBroken } from './removeBroken.ts';
import { removeRecord } from './removeRecord.ts';
import { boathouse, emptyDatabase, pullDay, stamp, winchHand } from './storage.testing.ts';
import type { Database } from './Tables.ts';
import { writeRecords } from './writeRecords.ts';

let database: Database;
beforeEach(async () => {
  database = await emptyDatabase();
});

const nothing = { clients: [], gyms: [], sessions: [], running: [] };

async function keptClient(record = winchHand, number = 1) {
  const kept = await keepRecord(database, 'clients', record, stamp(number));
  if (kept.kind !== 'kept') throw new Error(kept.kind);
  return kept.record;
}

describe('keepRecord', () => {
  it('keeps a record under a revision, and every change under the next', async () => {
    const first = await keptClient();
    expect(first).toEqual({
      ...winchHand,
      revision: 'r1',
      past: [],
      changedAt: '2027-03-15T00:00:01Z',
    });
    const second = await keptClient({ ...first, gymId: 'boathouse' }, 2);
    expect(second).toMatchObject({ gymId: 'boathouse', revision: 'r2', past: ['r1'] });
    expect(await findRecord(database, 'clients', first.id)).toEqual({
      kind: 'found',
      record: second,
    });
  });

  it('lets two tabs not overwrite each other', async () => {
    const read = await keptClient();
    const theirs = await keptClient({ ...read, gymId: 'theirs' }, 2);
    const mine = await keepRecord(database, 'clients', { ...read, gymId: 'mine' }, stamp(3));
    expect(mine).toEqual({ kind: 'changed-elsewhere', newer: theirs });
    const again = await keepRecord(database, 'clients', { ...theirs, gymId: 'mine' }, stamp(4));
    expect(again).toMatchObject({ kind: 'kept', record: { gymId: 'mine', past: ['r1', 'r2'] } });
  });

  it('does not bring back what another tab removed, and makes no second record of one id', async () => {
    const read = await keptClient();
    await removeRecord(database, 'clients', read);
    expect(await keepRecord(database, 'clients', read, stamp(2))).toEqual({
      kind: 'removed-elsewhere',
    });
    const back = await keptClient(winchHand, 3);
    expect(await keepRecord(database, 'clients', winchHand, stamp(4))).toEqual({
      kind: 'changed-elsewhere',
      newer: back,
    });
  });

  it('remembers the last fifty states', async () => {
    const past = Array.from({ length: 50 }, (_, number) => `p${number}`);
    const long = { ...winchHand, revision: 'p50', past };
    await writeRecords(database, { clients: [long] });
    const { past: after } = await keptClient(long);
    expect([after.length, after[0], after.at(-1)]).toEqual([50, 'p1', 'p50']);
  });
});

describe('a browser that does not keep it', () => {
  it('says that it is full, and nothing has changed', async () => {
    const client = await keptClient();
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await keepRecord(database, 'clients', client, stamp(2))).toMatchObject({
      kind: 'failed',
      reason: 'full',
    });
    put.mockRestore();
    expect(await findRecord(database, 'clients', client.id)).toMatchObject({ record: client });
  });

  it('says that it has closed the database', async () => {
    database.close();
    const failed = { kind: 'failed', reason: 'closed' };
    expect(await keepRecord(database, 'clients', winchHand, stamp(1))).toMatchObject(failed);
    expect(await listRecords(database, 'clients')).toMatchObject(failed);
    expect(await readAll(database)).toMatchObject(failed);
    expect(await eraseAll(database)).toMatchObject(failed);
    expect(await writeRecords(database, { clients: [winchHand] })).toMatchObject(failed);
  });
});

describe('removeRecord', () => {
  it('takes the sessions of a client along, and gives back all that went', async () => {
    const client = await keptClient();
    await keepRecord(database, 'sessions', pullDay, stamp(2));
    const other = { ...pullDay, id: 'other', clientId: 'someone-else' };
    await keepRecord(database, 'sessions', other, stamp(3));
    const before = await readAll(database);
    const removed = await removeRecord(database, 'clients', client);
    expect(await listRecords(database, 'sessions')).toMatchObject({ records: [{ id: 'other' }] });
    if (removed.kind !== 'removed') throw new Error(removed.kind);
    await writeRecords(database, removed.gone);
    expect(await readAll(database)).toEqual(before);
  });

  it('leaves what another tab has changed', async () => {
    const read = await keptClient();
    const newer = await keptClient(read, 2);
    expect(await removeRecord(database, 'clients', read)).toEqual({
      kind: 'changed-elsewhere',
      newer,
    });
    expect((await removeRecord(database, 'clients', newer)).kind).toBe('removed');
    expect(await removeRecord(database, 'clients', newer)).toEqual({
      kind: 'removed',
      gone: { clients: [], gyms: [], sessions: [] },
    });
  });
});

describe('what is in the database', () => {
  it('is listed for one client by day', async () => {
    for (const [number, date] of ['2027-03-20', '2027-01-02'].entries()) {
      const record = { ...pullDay, id: `s${number}`, date };
      await keepRecord(database, 'sessions', record, stamp(number));
    }
    const list = await listSessionsOf(database, winchHand.id);
    expect(list.kind === 'list' && list.records.map(({ date }) => date)).toEqual([
      '2027-01-02',
      '2027-03-20',
    ]);
    expect(await briefLog(database, winchHand.id)).toEqual({ sessions: 2, lastDate: '2027-03-20' });
    expect(await briefLog(database, 'winch')).toEqual({ sessions: 0 });
    expect(await listSessionsOf(database, 'nobody')).toEqual({
      kind: 'list',
      records: [],
      broken: [],
    });
  });

  it('is set aside where it does not hold, and stays until it is removed', async () => {
    const broken = { ...winchHand, id: 'broken', client: { name: 'Winch hand' } };
    await database.put('clients', broken);
    await keptClient();
    const list = await listRecords(database, 'clients');
    expect(list).toMatchObject({ records: [{ id: 'winch-hand' }] });
    if (list.kind !== 'list') throw new Error(list.kind);
    const [aside] = list.broken;
    expect(aside).toMatchObject({ kind: 'clients', id: 'broken' });
    expect(JSON.parse(aside?.text ?? '')).toEqual(broken);
    expect(aside?.problems[0]?.path).toEqual(['client', 'experience']);
    expect((await findRecord(database, 'clients', 'broken')).kind).toBe('broken');
    if (aside) await removeBroken(database, aside);
    expect(await findRecord(database, 'clients', 'broken')).toEqual({ kind: 'none' });
  });

  it('goes in one step', async () => {
    await keptClient();
    await keepRecord(database, 'gyms', boathouse, stamp(2));
    await keepRecord(database, 'sessions', pullDay, stamp(3));
    expect(await eraseAll(database)).toEqual({ kind: 'erased' });
    expect(await readAll(database)).toEqual({ kind: 'all', lists: nothing, broken: [] });
  });
});

describe('writeRecords', () => {
  it('writes all or nothing where something has changed since it was looked at', async () => {
    const read = await keptClient();
    await keptClient(read, 2);
    const lists = { gyms: [boathouse], clients: [{ ...read, gymId: 'file' }] };
    const expected = new Map([[read.id, read.revision]]);
    const before = await readAll(database);
    expect(await writeRecords(database, lists, expected)).toEqual({ kind: 'changed-elsewhere' });
    expect(await readAll(database)).toEqual(before);
    const now = new Map([[read.id, 'r2']]);
    expect(await writeRecords(database, lists, now)).toEqual({ kind: 'written' });
  });
});

describe('a change', () => {
  it('is told to every open page, and a change that failed is not', async () => {
    const heard = vi.fn();
    const stop = onChange(heard);
    const client = await keptClient();
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(1));
    await keepRecord(database, 'clients', { ...client, revision: 'stale' }, stamp(2));
    await removeRecord(database, 'clients', client);
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(2));
    stop();
  });
});
