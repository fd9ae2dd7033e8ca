import { readClient, readGym } from '@windlass/core/schema';
import {
  type Database,
  freshId,
  keepRecord,
  newRecord,
  stampNow,
  storageWords,
} from '../../storage/index.ts';
import { fileOf } from '../state/fileOf.ts';
import { getAt, type Json, textAt } from '../state/tree.ts';
import { type SavedPart, savedId } from './SavedIds.ts';
import type { SavedParts } from './useSaved.ts';
import { withoutLog } from './withLog.ts';
import { words } from './words.ts';

/** What came of keeping the person or the gym of a draft. */
export type KeptPart =
  | { readonly kind: 'kept'; readonly id: string; readonly says: string }
  | { readonly kind: 'not-kept'; readonly says: string };

/**
 * Keeps the person or the gym of a draft: in place of the one that it came from, or anew. A new
 * person gets the kept gym of the draft for their usual one.
 */
export async function keepPart(saved: SavedParts, part: SavedPart, draft: Json): Promise<KeptPart> {
  const content = fileOf(getAt(draft, [part]) ?? null);
  const read = part === 'client' ? readClient(content) : readGym(content);
  if (!read.ok) {
    return { kind: 'not-kept', says: words.wrong(read.problems[0]?.message ?? '') };
  }
  const id = savedId(draft, part);
  const kept = await (part === 'client'
    ? keepClient(saved, id, withoutLog(content, saved.log), savedId(draft, 'gym'))
    : keepGym(saved, id, content));
  const name = textAt(content, ['name']);
  if (kept.kind === 'kept') return { kind: 'kept', id: kept.record.id, says: words.kept(name) };
  if (kept.kind === 'failed') return { kind: 'not-kept', says: storageWords.failed(kept) };
  const isGone = kept.kind === 'removed-elsewhere';
  return {
    kind: 'not-kept',
    says: isGone ? words.removedElsewhere(name) : words.changedElsewhere(name),
  };
}

interface Records {
  readonly database: Database;
  readonly clients: SavedParts['clients'];
  readonly gyms: SavedParts['gyms'];
}

function keepClient({ database, clients, gyms }: Records, id: string, client: Json, gymId: string) {
  const own = clients.find((one) => one.id === id);
  const isGymKept = gyms.some((gym) => gym.id === gymId);
  const fresh = newRecord(freshId(), { client, ...(isGymKept && { gymId }) });
  return keepRecord(database, 'clients', own ? { ...own, client } : fresh, stampNow());
}

function keepGym({ database, gyms }: Records, id: string, gym: Json) {
  const own = gyms.find((one) => one.id === id);
  return keepRecord(
    database,
    'gyms',
    own ? { ...own, gym } : newRecord(freshId(), { gym }),
    stampNow(),
  );
}
