import type {
  DoneSession,
  RunningSession,
  SavedClient,
  SavedGym,
  Written,
} from '@windlass/core/schema';
import type { DBSchema, IDBPDatabase } from 'idb';

/** One thing that happened in a running session. */
export interface StoredEvent {
  /** Id of the running session. */
  readonly session: string;
  /** Counted from 0 within the session. */
  readonly number: number;
  readonly event: Written;
}

/** What the database holds. Events stand apart from their session, so that each is one small write. */
export interface Tables extends DBSchema {
  clients: { key: string; value: SavedClient };
  gyms: { key: string; value: SavedGym };
  sessions: { key: string; value: DoneSession; indexes: { day: [string, string] } };
  running: { key: string; value: Omit<RunningSession, 'events'> };
  events: { key: [string, number]; value: StoredEvent };
}

/** An open database. */
export type Database = IDBPDatabase<Tables>;

export const tableNames = ['clients', 'gyms', 'sessions', 'running', 'events'] as const;

export type TableName = (typeof tableNames)[number];

/** Records that are changed as a whole, and by revision. */
export type RecordKind = 'clients' | 'gyms' | 'sessions';
