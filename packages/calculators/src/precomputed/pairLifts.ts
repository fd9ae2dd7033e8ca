import { type Exercise, exercises, type MuscleId, muscles } from '@windlass/core/anatomy';

/** What a pair asks of an exercise. */
export type PairLift = Pick<
  Exercise,
  'id' | 'name' | 'loads' | 'stations' | 'startsWith' | 'direct' | 'indirect' | 'span' | 'endurance'
>;

/** Exercises whose repetitions are counted and whose load is known. */
export const pairLifts: readonly PairLift[] = exercises
  .filter(({ timed, loads }) => !timed && loads.some((load) => load !== 'band'))
  .map(({ id, name, loads, stations, startsWith, direct, indirect, span, endurance }) => {
    return { id, name, loads, stations, startsWith, direct, indirect, span, endurance };
  });

/** How coaches call each muscle. */
export const muscleNames: Readonly<Partial<Record<MuscleId, string>>> = Object.fromEntries(
  muscles.map(({ id, name }) => [id, name]),
);
