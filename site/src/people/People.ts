import type { SavedClient, SavedGym } from '@windlass/core/schema';
import type { BriefLog, BrokenRecord, RunningHead } from '../storage/index.ts';

/** A person with how much there is in the log. */
export interface Person {
  readonly record: SavedClient;
  readonly name: string;
  readonly log: BriefLog;
}

/** A gym with its name. */
export interface Place {
  readonly record: SavedGym;
  readonly name: string;
}

/** What the page shows of all that is kept. */
export interface People {
  readonly people: readonly Person[];
  readonly gyms: readonly Place[];
  readonly running: readonly RunningHead[];
  readonly broken: readonly BrokenRecord[];
  /** Sessions done, of all people together. */
  readonly sessions: number;
}
