import { requireNumber } from '../../basis/index.ts';
import type { PerformedSet } from '../PerformedSet.ts';

/** Stops sets that no one can have done, or that were done outside the days asked about. */
export function requireSets(
  where: string,
  sets: readonly PerformedSet[],
  firstDay: number,
  today: number,
): void {
  requireNumber(where, 'today', today, firstDay);
  for (const { load, reps, day, end, capacity = 1, secondsPerRep = 3 } of sets) {
    requireNumber(where, 'load', load, 1);
    requireNumber(where, 'reps', reps, 0, 200);
    requireNumber(where, 'day', Math.floor(day), firstDay, today);
    requireNumber(where, 'capacity', capacity, Number.MIN_VALUE, 1);
    requireNumber(where, 'secondsPerRep', secondsPerRep, 0.2, 120);
    if (end.kind === 'reserve') requireNumber(where, 'repsLeft', end.repsLeft, 0, 100);
    if (end.kind === 'more') requireNumber(where, 'atLeast', end.atLeast, 0, 100);
  }
}
