import type { BackupFile, SavedLists } from './Backup.ts';

/**
 * Writes everything that an application keeps as one JSON file (`BackupFile`), which `readBackup`
 * reads back exactly.
 *
 * @param writtenAt the moment, in universal time.
 * @example
 * ```ts
 * import { writeBackup } from '@windlass/core/schema';
 * const file = writeBackup({ clients: [], gyms: [], sessions: [], running: [] }, '2027-03-15T18:30:00Z');
 * JSON.parse(file).format; // 'windlass-backup'
 * ```
 */
export function writeBackup(
  { clients, gyms, sessions, running }: SavedLists,
  writtenAt: string,
): string {
  const head = { format: 'windlass-backup', version: 1, writtenAt } as const;
  const file: BackupFile = { ...head, clients, gyms, sessions, running };
  return `${JSON.stringify(file, null, 2)}\n`;
}
