import type { LoggedSet } from '../progress/index.ts';

/** Anything that a JSON file can hold. */
export type Written =
  | string
  | number
  | boolean
  | null
  | readonly Written[]
  | { readonly [key: string]: Written };

/** What every record has that is kept and changed. */
export interface Saved {
  readonly id: string;
  /** Names this state of the record: every change gives it a new one. */
  readonly revision: string;
  /** Names of the states before, the latest last; of a long history only the end. */
  readonly past: readonly string[];
  /** When it was changed last, such as `2027-03-15T18:30:00Z`. */
  readonly changedAt: string;
}

/** A client that is kept. */
export interface SavedClient extends Saved {
  /** As it was written: `readClient` reads it. */
  readonly client: Written;
  /** The kept gym where this person usually trains. */
  readonly gymId?: string;
}

/** A gym that is kept. */
export interface SavedGym extends Saved {
  /** As it was written: `readGym` reads it. */
  readonly gym: Written;
}

/** A session that a client did. */
export interface DoneSession extends Saved {
  readonly clientId: string;
  /** The day it began on, `YYYY-MM-DD`. */
  readonly date: string;
  /** What it was planned from, as it was written; left out where the sets came without a plan. */
  readonly plan?: Written;
  readonly sets: readonly LoggedSet[];
}

/** A session that is going on, with everything that happened in it so far. */
export interface RunningSession {
  readonly id: string;
  readonly clientId?: string;
  readonly startedAt: string;
  /** What it is planned from, as it was written. */
  readonly plan: Written;
  /** In the order in which they happened; nothing is ever taken out. */
  readonly events: readonly Written[];
}

/** What is kept, by the list that it is kept in. */
export interface SavedRecords {
  readonly clients: SavedClient;
  readonly gyms: SavedGym;
  readonly sessions: DoneSession;
  readonly running: RunningSession;
}

/** A list of kept records. */
export type SavedKind = keyof SavedRecords;
