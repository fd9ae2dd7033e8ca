import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { withSavedId } from '../../planner/saved/SavedIds.ts';
import { firstExample } from '../../planner/state/examples.ts';
import { getAt, setAt } from '../../planner/state/tree.ts';
import {
  keepRecord,
  listRecords,
  listSessionsOf,
  newRecord,
  openDatabase,
  stampNow,
} from '../../storage/index.ts';
import type { FloorEvent } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { openKeeper } from './openKeeper.ts';
import type { SavedRun } from './SavedRun.ts';

const set = {
  date: '2027-03-15',
  exercise: 'cable-pulldown',
  set: 1,
  load: { value: 48.75, unit: 'kg' },
  counts: 'stack',
  reps: 9,
} as const;
const opened = openPlan(firstExample);
if (opened.kind === 'wrong') throw new Error(opened.message);
const { session } = opened;
const run: SavedRun = {
  id: 'a1',
  plan: firstExample,
  startedAt: '2027-03-15T18:30:00.000Z',
  session,
  events: [],
};
const events: readonly FloorEvent[] = [
  { kind: 'done', at: 1000.25 },
  { kind: 'begun', leadInSeconds: 5, counted: true, at: 40_000 },
  { kind: 'rep', by: 'count', at: 50_000 },
];

async function keeper() {
  const kept = await openKeeper(() => {});
  if ('kind' in kept) throw new Error(kept.detail);
  return kept;
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe('a running session in the database', () => {
  it('is found again by the next page, with the same state, after every single event', async () => {
    const first = await keeper();
    expect(await first.find()).toBeNull();
    expect(await first.begin(run)).toEqual({ kind: 'kept' });
    for (const [number, event] of events.entries()) {
      expect(await first.append('a1', number, event)).toEqual({ kind: 'kept' });
      const found = await (await keeper()).find();
      expect(found?.session).toEqual(JSON.parse(JSON.stringify(session)));
      expect(found && foldEvents(found.session, found.events)).toEqual(
        foldEvents(session, events.slice(0, number + 1)),
      );
    }
  });

  it('is not written to by two tabs at once', async () => {
    const one = await keeper();
    const other = await keeper();
    await one.begin(run);
    await one.append('a1', 0, { kind: 'done', at: 1 });
    expect(await other.append('a1', 0, { kind: 'done', at: 2 })).toEqual({
      kind: 'changed-elsewhere',
    });
  });

  it('joins the log of its client when it ends, and is found no more', async () => {
    const kept = await keeper();
    await kept.begin(run);
    expect(await kept.end(run, { date: '2027-03-15', sets: [set] })).toEqual({ kind: 'kept' });
    expect(await kept.find()).toBeNull();
    const again = { ...run, id: 'a2' };
    await kept.begin(again);
    await kept.end(again, { date: '2027-03-18', sets: [{ ...set, date: '2027-03-18' }] });
    const database = await openDatabase();
    if (database.kind === 'failed') throw new Error(database.detail);
    const clients = await listRecords(database.database, 'clients');
    if (clients.kind === 'failed') throw new Error(clients.detail);
    expect(clients.records.map(({ client }) => client)).toMatchObject([{ name: 'Winch hand' }]);
    const sessions = await listSessionsOf(database.database, clients.records[0]?.id ?? '');
    expect(sessions.kind === 'list' && sessions.records.map(({ date }) => date)).toEqual([
      '2027-03-15',
      '2027-03-18',
    ]);
  });

  it('joins the log of the kept person that its plan came from, whoever else has that name', async () => {
    const opened = await openDatabase();
    if (opened.kind === 'failed') throw new Error(opened.detail);
    const { database } = opened;
    const client = getAt(firstExample, ['client']) ?? {};
    for (const id of ['namesake', 'own']) {
      await keepRecord(database, 'clients', newRecord(id, { client }), stampNow());
    }
    const kept = await keeper();
    const own = { ...run, plan: withSavedId(firstExample, 'client', 'own') };
    await kept.begin(own);
    await kept.end(own, { date: '2027-03-15', sets: [set] });
    expect(await listSessionsOf(database, 'own')).toMatchObject({ records: [{ sets: [set] }] });
    expect(await listSessionsOf(database, 'namesake')).toMatchObject({ records: [] });
  });

  it('keeps a person of whom a number was typed as one that can be read back', async () => {
    const kept = await keeper();
    const typed = {
      ...run,
      plan: setAt(firstExample, ['client', 'health', 'ageYears'], '41'),
    };
    await kept.begin(typed);
    await kept.end(typed, { date: '2027-03-15', sets: [set] });
    const opened = await openDatabase();
    if (opened.kind === 'failed') throw new Error(opened.detail);
    const clients = await listRecords(opened.database, 'clients');
    expect(clients).toMatchObject({
      records: [{ client: { health: { ageYears: 41 } } }],
      broken: [],
    });
  });

  it('leaves nothing behind when nothing was done in it', async () => {
    const kept = await keeper();
    await kept.begin(run);
    expect(await kept.end(run, { date: '2027-03-15', sets: [] })).toEqual({ kind: 'kept' });
    expect(await kept.find()).toBeNull();
  });
});
