import type { Exercise, MuscleId } from '../anatomy/index.ts';
import { dateOfDay, dayNumber, type MuscleDose, muscleDose } from '../recovery/index.ts';
import { setAsideTags } from './LiftSession.ts';
import type { LoggedSet } from './LoggedSet.ts';

/** Sets of one muscle in one week. */
export interface MuscleWeek {
  readonly muscle: MuscleId;
  /** 1 where it is a prime mover, 0.5 where it helps. */
  readonly sets: number;
  /** Those in sessions tagged light, travel or test, included above. */
  readonly setAside: number;
}

/** What each muscle had in one week. */
export interface TrainingWeek {
  /** The Monday. */
  readonly from: string;
  /** Most sets first. */
  readonly muscles: readonly MuscleWeek[];
}

/** What is read of an exercise to count its sets. */
export type CountedExercise = Pick<Exercise, 'id' | 'direct' | 'indirect'>;

/** Weeks of a log. */
export interface WeeklyDose {
  /** In order; weeks without a set are in it, empty. */
  readonly weeks: readonly TrainingWeek[];
  /** Names in the log that are no known exercise: their sets are not counted. */
  readonly unknown: readonly string[];
}

/**
 * How many sets each muscle had, week by week (Monday to Sunday), a helper's set counted as half.
 *
 * Both sides of a set are one set. What so many sets are worth is a question studies answer
 * differently: `doseEvidence` holds both sides.
 *
 * @param exercises those that the log names, such as `exercises` of `@windlass/core/anatomy`.
 * @returns no weeks for an empty log.
 * @throws RangeError for a date that does not exist.
 * @example
 * ```ts
 * import { exercises } from '@windlass/core/anatomy';
 * import { weeklyDose } from '@windlass/core/progress';
 * const set = {
 *   date: '2026-03-04', exercise: 'leg-extension', set: 1, counts: 'stack',
 *   load: { value: 40, unit: 'kg' }, reps: 9,
 * } as const;
 * const { weeks } = weeklyDose([set, { ...set, set: 2 }], exercises);
 * weeks[0]?.from; // '2026-03-02'
 * weeks[0]?.muscles[0]?.sets; // 2
 * ```
 */
export function weeklyDose(
  log: readonly LoggedSet[],
  exercises: readonly CountedExercise[],
): WeeklyDose {
  const known = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const unknown = new Set<string>();
  const counted = new Map<string, { set: LoggedSet; week: number; exercise: CountedExercise }>();
  for (const set of log) {
    const exercise = known.get(set.exercise);
    if (exercise === undefined) {
      unknown.add(set.exercise);
      continue;
    }
    const week = Math.floor((dayNumber(set.date) + 3) / 7);
    const key = set.side
      ? `${set.date}|${set.exercise}|${set.set}`
      : `${set.date}|${set.exercise}|${set.set}|${counted.size}`;
    counted.set(key, { set, week, exercise });
  }
  const rows = [...counted.values()].sort((a, b) => a.week - b.week);
  const inWeeks = new Map<number, typeof rows>();
  for (const row of rows) {
    const inWeek = inWeeks.get(row.week) ?? [];
    inWeek.push(row);
    inWeeks.set(row.week, inWeek);
  }
  const [first, last] = [rows[0]?.week ?? 0, rows.at(-1)?.week ?? -1];
  const weeks = Array.from({ length: last - first + 1 }, (_, i) => {
    const inWeek = inWeeks.get(first + i) ?? [];
    return { from: dateOfDay(7 * (first + i) - 3), muscles: musclesIn(inWeek) };
  });
  return { weeks, unknown: [...unknown].sort() };
}

function musclesIn(
  rows: readonly { readonly set: LoggedSet; readonly exercise: CountedExercise }[],
): readonly MuscleWeek[] {
  const sets = new Map<MuscleId, { sets: number; setAside: number }>();
  const doses = new Map<CountedExercise, readonly MuscleDose[]>();
  for (const { set, exercise } of rows) {
    const aside = set.tags?.some((tag) => setAsideTags.includes(tag)) === true;
    const dose = doses.get(exercise) ?? muscleDose([{ exercise, sets: 1 }]);
    doses.set(exercise, dose);
    for (const { muscle, countedSets } of dose) {
      const before = sets.get(muscle) ?? { sets: 0, setAside: 0 };
      sets.set(muscle, {
        sets: before.sets + countedSets,
        setAside: before.setAside + (aside ? countedSets : 0),
      });
    }
  }
  return [...sets.entries()]
    .map(([muscle, count]) => ({ muscle, ...count }))
    .sort((a, b) => b.sets - a.sets || (a.muscle < b.muscle ? -1 : 1));
}
