import type { MuscleId } from '../anatomy/index.ts';
import { requireNumber } from '../basis/index.ts';
import { type StopRule, stopRules } from '../safety/index.ts';
import { habitEffects } from './habitEffects.ts';
import {
  hoursUntilReady,
  type ReadyHours,
  type RecoveryHabit,
  unknownHabit,
} from './hoursUntilReady.ts';
import { type MuscleDose, muscleDose } from './muscleDose.ts';
import type { RecoveryEffect, RecoveryReports } from './RecoveryReports.ts';
import { reportEffects } from './reportEffects.ts';
import type { TrainedSets, TrainingStatus } from './TrainedSets.ts';

/** One session that lies behind. */
export interface PastSession {
  /** Hours of elapsed time since it began, 0 or more. */
  readonly hoursAgo: number;
  readonly work: readonly TrainedSets[];
}

/** Who trains, and what that person says. */
export interface ReadinessOptions {
  readonly status?: TrainingStatus;
  /** How this person was seen to recover, from `learnRecovery`. */
  readonly habit?: RecoveryHabit;
  readonly reports?: RecoveryReports;
}

/** When one muscle is ready, and why then. */
export interface MuscleReadiness {
  readonly muscle: MuscleId;
  /** Hours from now, 0 when it is past; by the session that holds the muscle back longest. */
  readonly readyIn: ReadyHours;
  /** That session's place in the list given, what it asked, and what reports made of it. */
  readonly session: number;
  readonly dose: MuscleDose;
  readonly effects: readonly RecoveryEffect[];
  /** Signs that ask for help instead of waiting; not empty when soreness is severe. */
  readonly watchFor: readonly StopRule[];
}

/**
 * When each muscle is ready for work as hard again, as hours from now.
 *
 * Each session's dose is turned into hours (`hoursUntilReady`), which the reports may lengthen; of
 * several sessions the one that holds the muscle back longest counts. They are not added up: a
 * second bout on a muscle that was still recovering did not slow its recovery (Chen and Nosaka
 * 2006). Muscle protein synthesis, protein intake and age set no clock here.
 *
 * @param sessions in any order; empty gives an empty list.
 * @returns one entry for each muscle trained, the last to be ready (likely) first.
 * @throws RangeError for hours below 0, and as `muscleDose` does.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { readiness } from '@windlass/core/recovery';
 * const found = findExercise('leg-press');
 * const work = found.kind === 'found' ? [{ exercise: found.exercise, sets: 3 }] : [];
 * readiness([{ hoursAgo: 500, work }])[0]?.readyIn; // { earliest: 0, likely: 0, cautious: 0 }
 * ```
 */
export function readiness(
  sessions: readonly PastSession[],
  options: ReadinessOptions = {},
): readonly MuscleReadiness[] {
  const { habit = unknownHabit, reports = {} } = options;
  const latest = new Map<MuscleId, MuscleReadiness & { readonly untilReady: number }>();
  for (const [session, { hoursAgo, work }] of sessions.entries()) {
    requireNumber('readiness', 'hoursAgo', hoursAgo, 0);
    for (const dose of muscleDose(work, options.status)) {
      const { muscle } = dose;
      const effects = [...habitEffects(habit), ...reportEffects(muscle, reports)];
      const factor = effects.reduce((product, effect) => product * effect.factor, 1);
      const hours = hoursUntilReady(dose.hardSets, options.status, { ...habit, shift: 0 });
      const left = (value: number) => value * factor - hoursAgo;
      const before = latest.get(muscle);
      if (before && before.untilReady >= left(hours.likely)) continue;
      latest.set(muscle, {
        muscle,
        untilReady: left(hours.likely),
        readyIn: {
          earliest: Math.max(0, left(hours.earliest)),
          likely: Math.max(0, left(hours.likely)),
          cautious: Math.max(0, left(hours.cautious)),
        },
        session,
        dose,
        effects,
        watchFor: reports.soreness?.[muscle] === 'severe' ? afterwards : [],
      });
    }
  }
  return [...latest.values()]
    .sort((a, b) => b.untilReady - a.untilReady || (a.muscle < b.muscle ? -1 : 1))
    .map(({ untilReady: _, ...entry }) => entry);
}

const afterwards = stopRules.filter(({ when }) => when === 'after');
