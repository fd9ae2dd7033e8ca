import type { Exercise, MuscleId } from '../../../packages/core/src/anatomy/index.ts';
import { testExercise } from '../../../packages/core/src/recovery/exercise.testing.ts';
import {
  hoursUntilReady,
  muscleDose,
  type TrainedSets,
  type TrainingStatus,
} from '../../../packages/core/src/recovery/index.ts';
import type { Comparison, Figure, Order } from '../Comparison.ts';
import { fitRecovery } from '../fitRecovery.ts';
import { readRows } from '../readRows.ts';
import { type Bout, bouts } from '../recoveryBouts.ts';

/** Hours until a measure is back, as studies bound them. */
export const recoveryTimes: Comparison = {
  id: 'recovery-times',
  title: 'Hours until the work is back',
  compares:
    'When a muscle was last seen impaired and first seen recovered after a session against the likely hours of the recovery model for that session. Rows without hours are compared by the order that they state.',
  tables: ['recovery_time_course'],
  tolerance: {
    rule: 'after the last impaired and not after the first recovered test',
    reason:
      'People were tested once a day or more rarely: these bounds are all that a study knows of the time.',
  },
  unit: 'hours',
  logarithmic: true,
  rows: () =>
    [...timed(), ...orders()].sort((a, b) => a.row - b.row).map(({ row: _, ...one }) => one),
};

const published = readRows('recovery_time_course');

/** Study and what was done, and who did it where two rows share both. */
function named(row: number): string {
  const at = published[row];
  return `${at?.text('study')}: ${at?.text('protocol')}, ${at?.text('measure')} (${row + 1})`;
}

function timed(): readonly (Figure & { readonly row: number })[] {
  const offsets = fitRecovery();
  return bouts.map((bout) => {
    const row = published[bout.row];
    const bound = (column: string, otherwise: number) =>
      row?.has(column) ? row.number(column) : otherwise;
    const offset = bout.measure === 'repetitions' ? 0 : offsets[bout.measure];
    return {
      row: bout.row,
      label: named(bout.row),
      predicted: Math.exp(offset) * likelyHours(bout),
      observed: undefined,
      allowed: [
        bound('hours_not_recovered', 0),
        bound('hours_recovered_by', Number.POSITIVE_INFINITY),
      ],
      fitted: true,
      ...(misses[bout.row] && { miss: misses[bout.row] }),
    };
  });
}

/** Why a row is missed, by its index. */
const misses: Readonly<Record<number, string>> = {
  8: 'Measures of the same triceps in the same men disagree: peak torque back by 24 h, total work not before 48 h. The model answers for repeated work.',
};

type Work = Omit<TrainedSets, 'exercise' | 'sets'> & { readonly sets?: number };

/** The rows without hours, each as the order that it states. */
function orders(): readonly (Order & { readonly row: number })[] {
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
  const rows = [
    {
      row: 20,
      given: 'elbow flexors = extensors > knee flexors > knee extensors',
      holds: flexors === extensors && extensors > hamstrings && hamstrings > quadriceps,
    },
    {
      row: 21,
      given: `several days: ${Math.round(of('biceps'))} h`,
      holds: of('biceps') > 48,
    },
    {
      row: 24,
      given: `once: ${Math.round(first)} h, again after 72 h: ${Math.round(second)} h`,
      holds: second <= first,
    },
    {
      row: 27,
      given: 'longer after failure than short of it',
      holds: of('vasti', { repsInReserve: 0 }) > of('vasti', { repsInReserve: 2 }),
    },
    {
      row: 28,
      given: 'week 1 > week 3 > week 10',
      holds: weeks[0] > weeks[1] && weeks[1] > weeks[2],
    },
  ];
  return rows.map(({ row, given, holds }) => ({
    row,
    label: named(row),
    found: published[row]?.text('finding') ?? '',
    given,
    holds,
  }));
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
