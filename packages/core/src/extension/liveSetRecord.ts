import { loadFromValue } from '../load/index.ts';
import type { PerformedSet, SetEnd } from '../strength/index.ts';
import type { LiveSet } from './LiveSet.ts';
import { liveStanding } from './liveStanding.ts';
import type { LiveEnd, LiveStanding, StageDone } from './Standing.ts';

/** What a finished set leaves behind. */
export type LiveSetRecord =
  /** The set has not ended; nothing can be said yet. */
  | { readonly kind: 'open' }
  | {
      readonly kind: 'done';
      /** What the lifting tells of strength, for `strengthAfter`; null when it tells nothing. */
      readonly performed: PerformedSet | null;
      readonly stages: readonly StageDone[];
      /** Repetitions, holds and lowerings; the attempt that failed is not timed. */
      readonly secondsUnderLoad: number;
      readonly end: LiveEnd;
      readonly signs: readonly string[];
    };

/**
 * A finished set as a record for the log.
 *
 * Strength is learned from the opening lift alone: it failed, or it was stopped with the
 * repetitions that the lifter says were left, or at least so many were done. What came after
 * failure says nothing of lifting strength.
 *
 * @param day counted from any fixed day, as in `PerformedSet`.
 * @param capacity share of fresh strength at the start of the set; fresh when left out.
 * @example
 * ```ts
 * import { advanceLiveSet, liveSetRecord, startLiveSet } from '@windlass/core/extension';
 * let set = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * for (const [kind, atSeconds] of [['started', 0], ['rep', 4], ['rep', 9], ['failed', 12]] as const) {
 *   set = advanceLiveSet(set, { kind, atSeconds }).set;
 * }
 * const record = liveSetRecord(set, 20_000);
 * record.kind === 'done' && record.performed?.reps; // 2
 * record.kind === 'done' && record.performed?.end; // { kind: 'failure' }
 * record.kind === 'done' && record.secondsUnderLoad; // 9
 * ```
 */
export function liveSetRecord(set: LiveSet, day: number, capacity?: number): LiveSetRecord {
  const standing = liveStanding(set);
  if (!standing.end) return { kind: 'open' };
  return {
    kind: 'done',
    performed: performedOf(set, standing, day, capacity),
    stages: standing.stages,
    secondsUnderLoad: standing.secondsUnderLoad,
    end: standing.end,
    signs: standing.signs,
  };
}

function performedOf(
  { plan }: LiveSet,
  { stages, end }: LiveStanding,
  day: number,
  capacity: number | undefined,
): PerformedSet | null {
  const [lift] = stages;
  if (!lift || !end) return null;
  const reps = lift.seconds.length;
  if (reps === 0 && !lift.failed) return null;
  const seconds = lift.seconds.reduce((sum, one) => sum + one, 0);
  return {
    load: loadFromValue(plan.load),
    reps,
    end: setEnd(lift, end),
    day,
    ...(reps > 0 && { secondsPerRep: seconds / reps }),
    ...(capacity !== undefined && { capacity }),
  };
}

function setEnd(lift: StageDone, end: LiveEnd): SetEnd {
  if (lift.failed) return { kind: 'failure' };
  if (end.by === 'choice' && end.repsLeft !== undefined) {
    return { kind: 'reserve', repsLeft: end.repsLeft };
  }
  return { kind: 'more', atLeast: 0 };
}
