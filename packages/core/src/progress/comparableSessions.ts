import { type LiftSession, setAsideTags } from './LiftSession.ts';
import { haveSameLoad, topSets } from './topSets.ts';

/**
 * The latest sessions in a row that can be held against each other: the same top load, the same
 * tempo, rests within a quarter of each other, as far as these were noted.
 *
 * Sessions tagged `travel`, `light` or `test` are passed over, as if they had not been.
 *
 * @returns oldest first; empty for no sessions.
 * @example
 * ```ts
 * import { comparableSessions } from '@windlass/core/progress';
 * comparableSessions([]); // []
 * ```
 */
export function comparableSessions(sessions: readonly LiftSession[]): readonly LiftSession[] {
  const own = sessions.filter(({ tags }) => !tags.some((tag) => setAsideTags.includes(tag)));
  const last = own.at(-1);
  if (last === undefined) return [];
  const from = own.findLastIndex((session) => !areComparable(session, last));
  return own.slice(from + 1);
}

function areComparable(a: LiftSession, b: LiftSession): boolean {
  const [one, other] = [topSets(a), topSets(b)];
  if (!haveSameLoad(one, other)) return false;
  const [first, second] = [one.sets[0], other.sets[0]];
  if (first.tempo !== undefined && second.tempo !== undefined && first.tempo !== second.tempo) {
    return false;
  }
  const [rest, otherRest] = [shortestRest(one.sets), shortestRest(other.sets)];
  if (rest === undefined || otherRest === undefined) return true;
  return Math.abs(rest - otherRest) <= 0.25 * Math.max(rest, otherRest);
}

/** The shortest rest before any set but the first, where it was noted. */
function shortestRest(sets: readonly { readonly restSeconds?: number }[]): number | undefined {
  const rests = sets.slice(1).flatMap(({ restSeconds }) => restSeconds ?? []);
  return rests.length > 0 ? Math.min(...rests) : undefined;
}
