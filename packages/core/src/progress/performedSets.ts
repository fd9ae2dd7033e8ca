import { type Exercise, sharesOf } from '../anatomy/index.ts';
import {
  type CapacityState,
  capacityFor,
  depositReps,
  freshCapacity,
  repCost,
  restCapacity,
} from '../capacity/index.ts';
import {
  generalCurve,
  kappaAtTempo,
  type PerformedSet,
  type RepCurve,
  shareForReps,
} from '../strength/index.ts';
import { parseTempo, secondsPerRep } from '../tempo/index.ts';
import type { LiftSession, SessionSet } from './LiftSession.ts';

/** What the sets are read by. */
export interface PerformedSetsOptions {
  readonly exercise: Pick<Exercise, 'direct' | 'indirect'>;
  /** The rep curve of the lift at 3 seconds a repetition; the general one when left out. */
  readonly curve?: RepCurve;
}

/**
 * Logged sessions as evidence for the strength posterior.
 *
 * The pace comes from the tempo where one was noted. A later set of a session carries the capacity
 * that the sets before it left and the rest gave back; where the rest before it was not noted, it is
 * left out, because nobody knows how tired it found the lifter. A set whose end was not noted counts
 * as a floor: so many were possible, perhaps more.
 *
 * @param sessions of one exercise, oldest first.
 * @returns in the same order; empty for no sessions.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { liftSessions, performedSets } from '@windlass/core/progress';
 * const set = {
 *   date: '2026-03-02', exercise: 'leg-press', set: 1, counts: 'total',
 *   load: { value: 80, unit: 'kg' }, reps: 8, end: { kind: 'failure' },
 * } as const;
 * const found = findExercise('leg-press');
 * const { sessions } = liftSessions([set, { ...set, set: 2, reps: 6, restSeconds: 120 }], 'leg-press');
 * const done = found.kind === 'found' ? performedSets(sessions, { exercise: found.exercise }) : [];
 * done.map(({ capacity }) => capacity === undefined || capacity < 1); // [true, true]
 * ```
 */
export function performedSets(
  sessions: readonly LiftSession[],
  { exercise, curve = generalCurve }: PerformedSetsOptions,
): readonly PerformedSet[] {
  const shares = sharesOf(exercise);
  return sessions.flatMap(({ day, sets }) => {
    let state: CapacityState | undefined = freshCapacity();
    return sets.flatMap((set, index): PerformedSet[] => {
      if (index > 0) {
        state =
          state && set.restSeconds !== undefined ? restCapacity(state, set.restSeconds) : undefined;
      }
      if (state === undefined) return [];
      const capacity = Math.max(0.05, capacityFor(state, shares));
      const pace = paceOf(set);
      state = depositReps(state, shares, set.reps, costOf(set, capacity, curve, pace));
      return [
        {
          load: set.load,
          reps: set.reps,
          end: set.end ?? { kind: 'more', atLeast: 0 },
          day,
          ...(pace === undefined ? {} : { secondsPerRep: pace }),
          ...(index === 0 ? {} : { capacity }),
        },
      ];
    });
  });
}

function paceOf({ tempo }: SessionSet): number | undefined {
  if (tempo === undefined) return undefined;
  const read = parseTempo(tempo);
  return read.ok ? secondsPerRep(read.value.tempo) : undefined;
}

/** What a repetition of the set cost, at the share of strength that its repetitions speak for. */
function costOf(set: SessionSet, capacity: number, curve: RepCurve, pace = 3): number {
  const left = set.end?.kind === 'reserve' ? set.end.repsLeft : 0;
  const kappa = kappaAtTempo(curve.kappa, pace).kappa.likely;
  const intensity = shareForReps(Math.max(1, set.reps + left), { ...curve, kappa }, capacity);
  return repCost({ intensity, kappa, alpha: curve.alpha });
}
