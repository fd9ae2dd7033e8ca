import type { SavedClient } from '@windlass/core/schema';
import { newRecord } from '../storage/index.ts';

/**
 * A person of whom only the name is known. Until more is said the plan takes the careful side: new
 * to lifting, nobody there to help, no question about health asked.
 */
export function newClient(id: string, name: string, gymId?: string): SavedClient {
  const client = { name, experience: 'new', alone: true, health: {}, sets: [] };
  return newRecord(id, { client, ...(gymId !== undefined && { gymId }) });
}
