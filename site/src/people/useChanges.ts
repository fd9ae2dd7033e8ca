import type { SavedRecords } from '@windlass/core/schema';
import {
  keepRecord,
  type RecordKind,
  removeRecord,
  stampNow,
  storageWords,
  writeRecords,
} from '../storage/index.ts';
import { useKeeping } from './Keeping.ts';
import { words } from './words.ts';

/** Keeping and deleting, with what came of it said on the page. */
export function useChanges() {
  const { database, say } = useKeeping();

  /** Keeps a record; true when it is kept. */
  async function keep<Kind extends RecordKind>(
    kind: Kind,
    record: SavedRecords[Kind],
    name: string,
    done: string,
  ): Promise<boolean> {
    const kept = await keepRecord(database, kind, record, stampNow());
    if (kept.kind === 'kept') say({ text: done });
    else if (kept.kind === 'failed') say({ text: storageWords.failed(kept), isWrong: true });
    else if (kept.kind === 'removed-elsewhere')
      say({ text: words.said.removedElsewhere(name), isWrong: true });
    else say({ text: words.said.changedElsewhere(name), isWrong: true });
    return kept.kind === 'kept';
  }

  /** Deletes a record and offers it back. */
  async function remove<Kind extends RecordKind>(
    kind: Kind,
    record: SavedRecords[Kind],
    name: string,
    done: string,
  ): Promise<void> {
    const removed = await removeRecord(database, kind, record);
    if (removed.kind === 'failed')
      return say({ text: storageWords.failed(removed), isWrong: true });
    if (removed.kind === 'changed-elsewhere')
      return say({ text: words.said.changedElsewhere(name), isWrong: true });
    const undo = async () => {
      const back = await writeRecords(database, removed.gone);
      if (back.kind === 'failed') say({ text: storageWords.failed(back), isWrong: true, undo });
      else say({ text: words.said.back(name) });
    };
    say({ text: done, undo });
  }

  return { keep, remove };
}
