import * as z from 'zod/mini';
import { fields, list } from './field.ts';
import { savedSchemas } from './savedSchemas.ts';

/** Most records of one kind in one file. */
export const MOST_RECORDS = 100_000;

/** A file that holds everything an application keeps. */
export const backupSchema = fields('the backup', {
  format: z.literal('windlass-backup'),
  version: z.literal(1),
  writtenAt: z.string(),
  clients: list('the clients', savedSchemas.clients, 0, MOST_RECORDS),
  gyms: list('the gyms', savedSchemas.gyms, 0, MOST_RECORDS),
  sessions: list('the sessions', savedSchemas.sessions, 0, MOST_RECORDS),
  running: list('the running sessions', savedSchemas.running, 0, MOST_RECORDS),
});
