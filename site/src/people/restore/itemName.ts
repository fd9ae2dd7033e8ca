import type { SavedLists } from '@windlass/core/schema';
import { dateWords } from '../../planner/sheet/dateWords.ts';
import { textAt } from '../../planner/state/tree.ts';
import type { RestoreItem } from './compareBackup.ts';
import { words } from './words.ts';

/** What a person calls a record; sessions by their day and whose they are. */
export function itemName(item: RestoreItem, clients: SavedLists['clients']): string {
  const nameOf = (id: string | undefined) => {
    const client = clients.find((one) => one.id === id);
    return client === undefined ? '' : textAt(client.client, ['name']);
  };
  if (item.kind === 'clients') return textAt(item.file.client, ['name']);
  if (item.kind === 'gyms') return textAt(item.file.gym, ['name']);
  const { clientId } = item.file;
  const day = item.kind === 'sessions' ? item.file.date : item.file.startedAt.slice(0, 10);
  return words.session(dateWords(day), nameOf(clientId));
}
