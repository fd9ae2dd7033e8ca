import type { PerformedSet } from '../PerformedSet.ts';

/** Sets by whole day, earliest day first, in their given order within a day. */
export function sessionsOf(
  sets: readonly PerformedSet[],
): readonly { readonly day: number; readonly sets: readonly PerformedSet[] }[] {
  const byDay = new Map<number, PerformedSet[]>();
  for (const set of sets) {
    const day = Math.floor(set.day);
    const same = byDay.get(day);
    if (same === undefined) byDay.set(day, [set]);
    else same.push(set);
  }
  return [...byDay].sort(([a], [b]) => a - b).map(([day, same]) => ({ day, sets: same }));
}
