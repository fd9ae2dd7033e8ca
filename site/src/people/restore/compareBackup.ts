import type { SavedKind, SavedLists, SavedRecords } from '@windlass/core/schema';
import type { BrokenRecord } from '../../storage/index.ts';
import { contentOf } from './contentOf.ts';

/** How a record of a file stands to what is here. */
export type RestoreState =
  /** There is none of its id here. */
  | 'added'
  /** The one of its id here cannot be read. */
  | 'mends'
  /** Both hold the same. */
  | 'same'
  /** What is here is an earlier state of the one in the file. */
  | 'file-goes-on'
  /** The one in the file is an earlier state of what is here. */
  | 'here-goes-on'
  /** Both have changed, each in its own way. */
  | 'conflict';

/** A record of a file beside the one that is here. */
export type RestoreItem = {
  readonly [Kind in SavedKind]: {
    readonly kind: Kind;
    readonly state: RestoreState;
    readonly file: SavedRecords[Kind];
    readonly here?: SavedRecords[Kind];
    /** Revision of the one here, whether that can be read or not. */
    readonly revision?: string;
  };
}[SavedKind];

/** What is here to compare with. */
export interface Here {
  readonly lists: SavedLists;
  readonly broken: readonly BrokenRecord[];
}

/** Compares a backup with what is here, record by record, in the order of the file. */
export function compareBackup(here: Here, file: SavedLists): readonly RestoreItem[] {
  return [
    ...compared('clients', here, file),
    ...compared('gyms', here, file),
    ...compared('sessions', here, file),
    ...compared('running', here, file),
  ] as readonly RestoreItem[];
}

function compared<Kind extends SavedKind>(kind: Kind, { lists, broken }: Here, file: SavedLists) {
  const own = new Map(lists[kind].map((record) => [record.id, record]));
  const unread = new Map(broken.filter((one) => one.kind === kind).map((one) => [one.id, one]));
  return file[kind].map((record) => {
    const here = own.get(record.id);
    const damaged = unread.get(record.id);
    const revision = revisionOf(here ?? (damaged && JSON.parse(damaged.text)));
    const missing = damaged ? 'mends' : 'added';
    return {
      kind,
      state: here === undefined ? missing : stateOf(here, record),
      file: record,
      ...(here && { here }),
      ...(revision !== undefined && { revision }),
    };
  });
}

function revisionOf(record: unknown): string | undefined {
  if (typeof record !== 'object' || record === null || !('revision' in record)) return undefined;
  return typeof record.revision === 'string' ? record.revision : undefined;
}

type AnyRecord = SavedRecords[SavedKind];

function stateOf(here: AnyRecord, file: AnyRecord): RestoreState {
  if (contentOf(here) === contentOf(file)) return 'same';
  if (goesOn(file, here)) return 'file-goes-on';
  return goesOn(here, file) ? 'here-goes-on' : 'conflict';
}

/** Whether one record is a later state of the other. */
function goesOn(later: AnyRecord, earlier: AnyRecord): boolean {
  if ('events' in later && 'events' in earlier) {
    return (
      later.events.length > earlier.events.length &&
      contentOf({ ...later, events: later.events.slice(0, earlier.events.length) }) ===
        contentOf(earlier)
    );
  }
  return 'past' in later && 'past' in earlier && later.past.includes(earlier.revision);
}
