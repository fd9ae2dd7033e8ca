import type { Exercise, MuscleId } from '../../packages/core/src/anatomy/index.ts';
import { testExercise } from '../../packages/core/src/recovery/exercise.testing.ts';
import {
  hoursUntilReady,
  muscleDose,
  type TrainedSets,
  type TrainingStatus,
} from '../../packages/core/src/recovery/index.ts';
import { fitRecovery } from './fitRecovery.ts';
import { readReference } from './readReference.ts';
import { type Bout, bouts } from './recoveryBouts.ts';

/** One published row against the library. */
export interface RecoveryCheck {
  readonly row: number;
  readonly study: string;
  /** Likely hours for the row's measure, or what was compared where the row has no hours. */
  readonly predicted: number | string;
  readonly lastImpaired: number | null;
  readonly firstRecovered: number | null;
  readonly inside: boolean;
  /** Why a row is missed. */
  readonly explained?: string;
}

/** Why a row is missed, by its index. */
const misses: Readonly<Record<number, string>> = {
  8: 'Measures of the same triceps in the same men disagree: peak torque back by 24 h, total work not before 48 h. The model answers for repeated work.',
};

/** Every row of `recovery_time_course`: 24 with bounds in hours, 5 that only state an order. */
export function recoveryChecks(): readonly RecoveryCheck[] {
  const { rows } = readReference('recovery_time_course');
  const offsets = fitRecovery();
  const timed = bouts.map((bout) => {
    const [, , , , , last, first] = rows[bout.row] as (number | null)[];
    const offset = bout.measure === 'repetitions' ? 0 : offsets[bout.measure];
    const hours = Math.exp(offset) * likelyHours(bout);
    const inside = hours > (last ?? 0) && hours <= (first ?? Number.POSITIVE_INFINITY);
    return { row: bout.row, predicted: hours, last: last ?? null, first: first ?? null, inside };
  });
  const ordered = orders().map((order) => ({ ...order, last: null, first: null }));
  return [...timed, ...ordered]
    .sort((a, b) => a.row - b.row)
    .map(({ row, predicted, last, first, inside }) => ({
      row,
      study: String(rows[row]?.[0]),
      predicted,
      lastImpaired: last,
      firstRecovered: first,
      inside,
      ...(misses[row] ? { explained: misses[row] } : {}),
    }));
}

type Work = Omit<TrainedSets, 'exercise' | 'sets'> & { readonly sets?: number };

/** The rows without hours, each as the order that it states. */
function orders(): { row: number; predicted: string; inside: boolean }[] {
  const lowering = { sets: 5, loweringHeavy: true, likeSessionsDaysAgo: [] };
  const of = (muscle: MuscleId, work: Work = lowering) =>
    hours(muscle, { sets: 3, ...work }, 'recreational');
  const [flexors, extensors, hamstrings, quadriceps] = (
    ['biceps', 'triceps-long-head', 'hamstrings', 'vasti'] as const
  ).map((muscle) => of(muscle)) as [number, number, number, number];
  const weeks = [[], [3, 7, 10, 14], Array.from({ length: 18 }, (_, i) => 3.5 * (i + 1))].map(
    (likeSessionsDaysAgo) => of('vasti', { likeSessionsDaysAgo }),
  ) as [number, number, number];
  const bout = { sets: 3, loweringHeavy: true };
  const first = of('biceps', { ...bout, likeSessionsDaysAgo: [] });
  const second = 72 + of('biceps', { ...bout, likeSessionsDaysAgo: [3] });
  return [
    {
      row: 20,
      predicted: 'elbow flexors = extensors > knee flexors > knee extensors',
      inside: flexors === extensors && extensors > hamstrings && hamstrings > quadriceps,
    },
    {
      row: 21,
      predicted: `several days: ${Math.round(of('biceps'))} h`,
      inside: of('biceps') > 48,
    },
    {
      row: 24,
      predicted: `once: ${Math.round(first)} h, again after 72 h: ${Math.round(second)} h`,
      inside: second <= first,
    },
    {
      row: 27,
      predicted: 'longer after failure than short of it',
      inside: of('vasti', { repsInReserve: 0 }) > of('vasti', { repsInReserve: 2 }),
    },
    {
      row: 28,
      predicted: 'week 1 > week 3 > week 10',
      inside: weeks[0] > weeks[1] && weeks[1] > weeks[2],
    },
  ];
}

function likelyHours(bout: Bout): number {
  return hours(bout.muscle, bout, bout.status, bout.helps);
}

function hours(
  muscle: MuscleId,
  work: Omit<TrainedSets, 'exercise'>,
  status: TrainingStatus,
  helps = false,
): number {
  const dose = muscleDose([{ ...work, exercise: exerciseFor(muscle, helps) }], status).find(
    (entry) => entry.muscle === muscle,
  );
  return hoursUntilReady(dose?.hardSets ?? 0, status).likely;
}

/** An exercise for one muscle, or with it as a helper of the chest. */
function exerciseFor(muscle: MuscleId, helps: boolean): Exercise {
  return helps ? testExercise({ chest: 1 }, { [muscle]: 1 }) : testExercise({ [muscle]: 1 });
}
