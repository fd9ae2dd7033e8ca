import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { keepRecord } from './keepRecord.ts';
import { type Migration, migrations } from './migrations.ts';
import { openDatabase } from './openDatabase.ts';
import { readAll } from './readAll.ts';
import { boathouse, emptyDatabase, stamp, winchHand } from './storage.testing.ts';
import { words } from './words.ts';

/** What a later version could be: every client gets a field, and a gym's name changes. */
const next: readonly Migration[] = [
  ...migrations,
  {
    creates: [],
    change: (table, record) =>
      table === 'clients' ? { ...(record as object), gymId: 'boathouse' } : record,
  },
];

async function opened(steps = migrations) {
  const outcome = await openDatabase({ steps });
  if (outcome.kind !== 'open') throw new Error(outcome.reason);
  return outcome.database;
}

describe('openDatabase', () => {
  it.each(migrations.map((_, from) => from))('goes from version %i to this one', async (from) => {
    globalThis.indexedDB = new IDBFactory();
    if (from > 0) (await opened(migrations.slice(0, from))).close();
    const database = await opened();
    expect(database.version).toBe(migrations.length);
    expect(await keepRecord(database, 'clients', winchHand, stamp(1))).toMatchObject({
      kind: 'kept',
    });
  });

  it('takes all records along to a later version', async () => {
    const before = await emptyDatabase();
    await keepRecord(before, 'clients', winchHand, stamp(1));
    await keepRecord(before, 'gyms', boathouse, stamp(2));
    before.close();
    const after = await opened(next);
    expect(await readAll(after)).toMatchObject({
      lists: { clients: [{ id: 'winch-hand', gymId: 'boathouse' }], gyms: [{ id: 'boathouse' }] },
    });
  });

  it('leaves everything as it was when a step fails half way', async () => {
    const before = await emptyDatabase();
    await keepRecord(before, 'clients', winchHand, stamp(1));
    const kept = await readAll(before);
    before.close();
    const failing: Migration = {
      creates: [],
      change: () => {
        throw new RangeError('a step that fails');
      },
    };
    expect((await openDatabase({ steps: [...migrations, failing] })).kind).toBe('failed');
    expect(await readAll(await opened())).toEqual(kept);
  });

  it('leaves the database of a newer page alone', async () => {
    globalThis.indexedDB = new IDBFactory();
    (await opened(next)).close();
    expect(await openDatabase()).toMatchObject({ kind: 'failed', reason: 'newer' });
  });

  it('gives way to a newer page and says so', async () => {
    globalThis.indexedDB = new IDBFactory();
    const onLost = vi.fn();
    await openDatabase({ onLost });
    await opened(next);
    expect(onLost).toHaveBeenCalledOnce();
  });

  it('is blocked by a page that does not give way, and opens once that is closed', async () => {
    globalThis.indexedDB = new IDBFactory();
    const stubborn = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('windlass', 1);
      request.onsuccess = () => resolve(request.result);
    });
    expect(await openDatabase({ steps: next })).toMatchObject({ reason: 'blocked' });
    stubborn.close();
    expect((await openDatabase({ steps: next })).kind).toBe('open');
  });

  it.each([
    [new DOMException('no', 'SecurityError'), 'denied'],
    [new DOMException('no', 'UnknownError'), 'denied'],
    [new Error('no'), 'denied'],
    [new DOMException('no', 'QuotaExceededError'), 'full'],
  ])('says when the browser answers with %s', async (error, reason) => {
    globalThis.indexedDB = {
      open: () => {
        throw error;
      },
    } as unknown as IDBFactory;
    const failure = await openDatabase();
    expect(failure).toMatchObject({ kind: 'failed', reason });
    if (failure.kind === 'failed') expect(words.failed(failure)).toMatch(/save it as a file/);
  });

  it('says when there is no database at all', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await openDatabase()).toMatchObject({ kind: 'failed', reason: 'denied' });
    vi.unstubAllGlobals();
  });
});
