import type { Outcome } from '../basis/index.ts';
import type { PlanGym } from '../session/index.ts';
import { gymSchema } from './gymSchema.ts';
import { readWith } from './readWith.ts';

/**
 * Reads a gym from unknown input, such as a parsed JSON file.
 *
 * Loads are written with their unit (`"20 kg"`, `"45 lb"`) or as `{ "value", "unit" }`. Every
 * problem says where it is and what would be right; a field that does not exist is a problem.
 *
 * @example
 * ```ts
 * import { readGym } from '@windlass/core/schema';
 * const gym = readGym({ name: 'Boathouse', plates: [{ weight: '20', pieces: 4 }], equipment: [] });
 * gym.ok ? [] : gym.problems.map(({ path }) => path.join('.')); // ['plates.0.weight', 'equipment']
 * ```
 */
export function readGym(input: unknown): Outcome<PlanGym> {
  return readWith(gymSchema, input);
}
