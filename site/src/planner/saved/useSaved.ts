import type { SavedClient, SavedGym } from '@windlass/core/schema';
import { useEffect, useState } from 'preact/hooks';
import { type Database, type Failure, listRecords, onChange } from '../../storage/index.ts';
import type { Json } from '../state/tree.ts';
import { logOfClient } from './logOfClient.ts';
import { sharedDatabase } from './sharedDatabase.ts';

/** What is kept that a plan can be made of. */
export interface SavedParts {
  readonly kind: 'open';
  readonly database: Database;
  readonly clients: readonly SavedClient[];
  readonly gyms: readonly SavedGym[];
  /** What the log tells of the person asked for. */
  readonly log: readonly Json[];
}

/** What is kept, followed as it changes; nothing while it is read the first time. */
export function useSaved(clientId: string): SavedParts | Failure | undefined {
  const [saved, setSaved] = useState<SavedParts | Failure>();
  useEffect(() => {
    let isWanted = true;
    const read = () => readSaved(clientId).then((parts) => isWanted && setSaved(parts));
    void read();
    const stop = onChange(read);
    return () => {
      isWanted = false;
      stop();
    };
  }, [clientId]);
  return saved;
}

async function readSaved(clientId: string): Promise<SavedParts | Failure> {
  const opened = await sharedDatabase();
  if (opened.kind === 'failed') return opened;
  const { database } = opened;
  const [clients, gyms, log] = await Promise.all([
    listRecords(database, 'clients'),
    listRecords(database, 'gyms'),
    logOfClient(database, clientId),
  ]);
  if (clients.kind === 'failed') return clients;
  if (gyms.kind === 'failed') return gyms;
  if (log.kind === 'failed') return log;
  return {
    kind: 'open',
    database,
    clients: clients.records,
    gyms: gyms.records,
    log: log.sets,
  };
}
