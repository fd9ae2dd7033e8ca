import type { Outcome } from '../basis/index.ts';
import type { Client } from '../session/index.ts';
import { clientSchema } from './clientSchema.ts';
import { readWith } from './readWith.ts';

/**
 * Reads a client: experience, health answers, whether alone, and the sets that are known.
 *
 * @example
 * ```ts
 * import { readClient } from '@windlass/core/schema';
 * const client = readClient({ name: 'Winch hand', experience: 'some', alone: true, health: {}, sets: [] });
 * client.ok && client.value.alone; // true
 * ```
 */
export function readClient(input: unknown): Outcome<Client> {
  return readWith(clientSchema, input);
}
