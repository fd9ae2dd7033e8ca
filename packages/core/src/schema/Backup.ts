import type { Problem } from '../basis/index.ts';
import type { SavedKind, SavedRecords } from './Saved.ts';

/** All lists of kept records. */
export type SavedLists = { readonly [Kind in SavedKind]: readonly SavedRecords[Kind][] };

/** A file that holds everything an application keeps. */
export interface BackupFile extends SavedLists {
  readonly format: 'windlass-backup';
  readonly version: 1;
  /** When it was written. */
  readonly writtenAt: string;
}

/** A record of a backup that could not be read, and why. */
export interface UnreadRecord {
  readonly kind: SavedKind;
  /** Its number in the list, from 1. */
  readonly number: number;
  /** The record as it stands in the file. */
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** What a backup gave. */
export interface ReadBackup {
  readonly lists: SavedLists;
  readonly writtenAt: string;
  readonly unread: readonly UnreadRecord[];
}
