import type { Outcome } from '../basis/index.ts';
import type { ClientHealth } from '../safety/ClientHealth.ts';
import { healthSchema } from './healthSchema.ts';
import { readWith } from './readWith.ts';

/**
 * Reads the answers that were asked of a person before training.
 *
 * @example
 * ```ts
 * import { readHealth } from '@windlass/core/schema';
 * const health = readHealth({ bloodPressure: { status: 'high' } });
 * health.ok ? '' : health.problems[0]?.message; // 'Give the blood pressure as one of: not-raised, treated, untreated, unknown.'
 * ```
 */
export function readHealth(input: unknown): Outcome<ClientHealth> {
  return readWith(healthSchema, input);
}
