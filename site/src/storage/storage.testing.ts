import 'fake-indexeddb/auto';
import type { DoneSession, SavedClient, SavedGym } from '@windlass/core/schema';
import { IDBFactory } from 'fake-indexeddb';
import { newRecord } from './newRecord.ts';
import { openDatabase } from './openDatabase.ts';
import type { Database } from './Tables.ts';

/** An empty database in memory. */
export async function emptyDatabase(): Promise<Database> {
  globalThis.indexedDB = new IDBFactory();
  const opened = await openDatabase();
  if (opened.kind !== 'open') throw new Error(opened.detail);
  return opened.database;
}

export const winchHand: SavedClient = newRecord('winch-hand', {
  client: {
    name: 'Winch hand',
    experience: 'some',
    bodyWeight: '78 kg',
    alone: true,
    health: {},
    sets: [],
  },
});

export const boathouse: SavedGym = newRecord('boathouse', {
  gym: {
    name: 'Boathouse',
    plates: [],
    equipment: [{ kind: 'body', id: 'bar', name: 'Chin-up bar' }],
  },
});

export const pullDay: DoneSession = newRecord('pull-day', {
  clientId: winchHand.id,
  date: '2027-03-15',
  plan: { client: {}, gym: {}, intent: {} },
  sets: [
    {
      date: '2027-03-15',
      exercise: 'chin-up',
      set: 1,
      load: { value: 0, unit: 'kg' },
      counts: 'added',
      bodyWeight: { value: 78, unit: 'kg' },
      reps: 8,
    },
  ],
});

/** Stamps in order: the first is `r1` at 2027-03-15T00:00:01Z. */
export function stamp(number: number) {
  return { revision: `r${number}`, at: `2027-03-15T00:00:0${number}Z` };
}
