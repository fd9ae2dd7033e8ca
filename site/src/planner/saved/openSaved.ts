import { findRecord, storageWords } from '../../storage/index.ts';
import type { Json } from '../state/tree.ts';
import { draftForClient, draftForGym } from './draftFor.ts';
import { logOfClient } from './logOfClient.ts';
import type { SavedPart } from './SavedIds.ts';
import { sharedDatabase } from './sharedDatabase.ts';
import { words } from './words.ts';

/** What came of opening something kept: how it changes the draft, or a sentence. */
export type OpenedSaved =
  | { readonly kind: 'opened'; readonly to: (draft: Json) => Json }
  | { readonly kind: 'not-opened'; readonly says: string };

/** Opens a kept person, in their usual gym, or a kept gym. */
export async function openSaved(part: SavedPart, id: string, today: string): Promise<OpenedSaved> {
  const opened = await sharedDatabase();
  if (opened.kind === 'failed') return no(storageWords.failed(opened));
  const { database } = opened;
  if (part === 'gym') {
    const gym = await findRecord(database, 'gyms', id);
    if (gym.kind === 'failed') return no(storageWords.failed(gym));
    if (gym.kind !== 'found') return no(words.notHere);
    return { kind: 'opened', to: (draft) => draftForGym(draft, gym.record) };
  }
  const client = await findRecord(database, 'clients', id);
  if (client.kind === 'failed') return no(storageWords.failed(client));
  if (client.kind !== 'found') return no(words.notHere);
  const log = await logOfClient(database, id);
  if (log.kind === 'failed') return no(storageWords.failed(log));
  const { gymId } = client.record;
  const gym = gymId === undefined ? undefined : await findRecord(database, 'gyms', gymId);
  const to = (draft: Json) => draftForClient(draft, client.record, log.sets, today);
  return {
    kind: 'opened',
    to: gym?.kind === 'found' ? (draft) => draftForGym(to(draft), gym.record) : to,
  };
}

function no(says: string): OpenedSaved {
  return { kind: 'not-opened', says };
}
