import type { Outcome } from '../basis/index.ts';
import type { SessionIntent } from '../session/index.ts';
import { intentSchema } from './intentSchema.ts';
import { readWith } from './readWith.ts';

/**
 * Reads what is wanted of a session: the day, the lifts with window and tempo, the rests.
 *
 * @example
 * ```ts
 * import { readIntent } from '@windlass/core/schema';
 * const lift = { exercise: 'chin-up', equipment: 'station', tempo: '3-0-1-0', sets: 2, restSeconds: 150 };
 * const intent = readIntent({
 *   date: '2027-03-15',
 *   unit: 'kg',
 *   changeSeconds: 120,
 *   lifts: [{ ...lift, window: { minReps: 11, maxReps: 8 } }],
 * });
 * intent.ok ? '' : intent.problems[0]?.code; // 'window.upside-down'
 * ```
 */
export function readIntent(input: unknown): Outcome<SessionIntent> {
  return readWith(intentSchema, input);
}
