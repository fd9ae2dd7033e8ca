import { beforeEach, describe, expect, it } from 'vitest';
import { appendEvent } from './appendEvent.ts';
import { endRunning } from './endRunning.ts';
import { findRunning } from './findRunning.ts';
import { listRunning } from './listRunning.ts';
import { listSessionsOf } from './listSessionsOf.ts';
import { readAll } from './readAll.ts';
import { startRunning } from './startRunning.ts';
import { emptyDatabase, pullDay, stamp } from './storage.testing.ts';
import type { Database } from './Tables.ts';
import { writeRecords } from './writeRecords.ts';

const head = {
  id: 'floor',
  clientId: 'winch-hand',
  startedAt: '2027-03-15T18:00:00Z',
  plan: { client: {}, gym: {}, intent: {} },
};

let database: Database;
beforeEach(async () => {
  database = await emptyDatabase();
  await startRunning(database, head);
});

describe('a running session', () => {
  it('has its events in the order in which they happened, past the tenth too', async () => {
    const events = Array.from({ length: 12 }, (_, number) => ({ kind: 'rep', number }));
    for (const [number, event] of events.entries()) {
      expect(await appendEvent(database, head.id, number, event)).toEqual({ kind: 'appended' });
    }
    expect(await findRunning(database, head.id)).toEqual({
      kind: 'found',
      record: { ...head, events },
    });
  });

  it('takes no event of a tab that does not know the others', async () => {
    await appendEvent(database, head.id, 0, 'first');
    expect(await appendEvent(database, head.id, 0, 'other')).toEqual({ kind: 'changed-elsewhere' });
    expect(await appendEvent(database, head.id, 2, 'later')).toEqual({ kind: 'changed-elsewhere' });
    expect(await findRunning(database, head.id)).toMatchObject({ record: { events: ['first'] } });
  });

  it('is started once, and listed with the latest first', async () => {
    expect((await startRunning(database, head)).kind).toBe('failed');
    await startRunning(database, { ...head, id: 'later', startedAt: '2027-03-15T19:00:00Z' });
    const list = await listRunning(database);
    expect(list.kind === 'list' && list.running.map(({ id }) => id)).toEqual(['later', 'floor']);
  });

  it('ends in one step: its events go and what was done joins the log', async () => {
    await appendEvent(database, head.id, 0, 'first');
    expect(await endRunning(database, head.id, pullDay, stamp(1))).toEqual({ kind: 'ended' });
    expect(await findRunning(database, head.id)).toEqual({ kind: 'none' });
    expect(await database.count('events')).toBe(0);
    expect(await listSessionsOf(database, 'winch-hand')).toMatchObject({
      records: [{ id: 'pull-day', revision: 'r1' }],
    });
    expect(await appendEvent(database, head.id, 1, 'late')).toEqual({ kind: 'changed-elsewhere' });
  });

  it('goes on running when its log entry cannot be kept', async () => {
    await writeRecords(database, { sessions: [pullDay] });
    expect((await endRunning(database, head.id, pullDay, stamp(1))).kind).toBe('failed');
    expect((await findRunning(database, head.id)).kind).toBe('found');
  });

  it('comes back from a copy of everything', async () => {
    await appendEvent(database, head.id, 0, 'first');
    const all = await readAll(database);
    if (all.kind !== 'all') throw new Error(all.kind);
    await appendEvent(database, head.id, 1, 'second');
    await writeRecords(database, all.lists);
    expect(await readAll(database)).toEqual(all);
  });
});
