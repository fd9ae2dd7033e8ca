import type { Outcome } from '../basis/index.ts';
import type { SessionQuestion } from '../session/index.ts';
import { readWith } from './readWith.ts';
import { sessionFileSchema } from './sessionFileSchema.ts';

/**
 * Reads what a session is planned from: a client, a gym and an intent.
 *
 * @param input unknown input, such as a parsed JSON file.
 * @example
 * ```ts
 * import { readSessionFile } from '@windlass/core/schema';
 * const file = readSessionFile({ client: {}, gym: {}, intent: {} });
 * file.ok ? '' : file.problems[0]?.message; // 'Give the name of the client as a text of 1 to 80 characters.'
 * ```
 */
export function readSessionFile(input: unknown): Outcome<SessionQuestion> {
  return readWith(sessionFileSchema, input);
}
