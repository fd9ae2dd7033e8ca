import type { SavedLists } from '@windlass/core/schema';
import type { RestoreItem } from './compareBackup.ts';

/** What is to be written, and the revisions that it was compared with. */
export interface Taken {
  readonly lists: SavedLists;
  readonly expected: ReadonlyMap<string, string>;
  readonly count: number;
}

/** The records of the file that are chosen. */
export function takenLists(
  items: readonly RestoreItem[],
  isTaken: (item: RestoreItem) => boolean,
): Taken {
  const taken = items.filter(isTaken);
  const of = <Kind extends RestoreItem['kind']>(kind: Kind) =>
    taken.flatMap((item) => (item.kind === kind ? [item.file] : [])) as SavedLists[Kind][number][];
  return {
    lists: {
      clients: of('clients'),
      gyms: of('gyms'),
      sessions: of('sessions'),
      running: of('running'),
    },
    expected: new Map(
      taken.flatMap(({ file, revision }) => (revision === undefined ? [] : [[file.id, revision]])),
    ),
    count: taken.length,
  };
}
