export type { BackupFile, ReadBackup, SavedLists, UnreadRecord } from './Backup.ts';
export { jsonSchemaOf, type SchemaName, schemaNames } from './jsonSchemaOf.ts';
export { readBackup } from './readBackup.ts';
export { readClient } from './readClient.ts';
export { readGym } from './readGym.ts';
export { readHealth } from './readHealth.ts';
export { readIntent } from './readIntent.ts';
export { readSaved } from './readSaved.ts';
export { readSessionFile } from './readSessionFile.ts';
export type {
  DoneSession,
  RunningSession,
  Saved,
  SavedClient,
  SavedGym,
  SavedKind,
  SavedRecords,
  Written,
} from './Saved.ts';
export { writeBackup } from './writeBackup.ts';
