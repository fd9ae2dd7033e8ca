import type { MuscleId } from '../anatomy/index.ts';
import { requireNumber } from '../basis/index.ts';
import { recoveryModel } from './recoveryModel.ts';
import { setCost } from './setCost.ts';
import type { TrainedSets, TrainingStatus } from './TrainedSets.ts';
import { unaccustomedShare } from './unaccustomedShare.ts';

/** What a session asks of one muscle. */
export interface MuscleDose {
  readonly muscle: MuscleId;
  /** Sets counted for the week: 1 where the muscle is a prime mover, 0.5 where it helps. */
  readonly countedSets: number;
  /** The same, weighed by how hard they are to recover from: in familiar sets to lifting failure. */
  readonly hardSets: number;
}

/**
 * What sets ask of each muscle, most first.
 *
 * A set counts 1 for a prime mover and 0.5 for a helper, by the muscle shares of the exercise. For
 * recovery it is weighed: less for each repetition left (up to four), half a set more for each
 * stage past lifting failure, more for lowering-heavy work, more for work that is new to this
 * person, there most for the arms and least for the front of the thigh.
 *
 * @param work one entry an exercise; empty gives an empty list.
 * @param status who trains; it decides whether work without a history is new. `recreational` when
 * left out.
 * @returns one entry for each muscle with a dose above 0, by `hardSets`, then by name.
 * @throws RangeError for sets outside 0 to 100, a reserve outside 0 to 50, stages outside 0 to 10.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { muscleDose } from '@windlass/core/recovery';
 * const found = findExercise('leg-extension');
 * const work = found.kind === 'found' ? [{ exercise: found.exercise, sets: 3 }] : [];
 * muscleDose(work)[0]; // { muscle: 'rectus-femoris', countedSets: 3, hardSets: 3 }
 * ```
 */
export function muscleDose(
  work: readonly TrainedSets[],
  status: TrainingStatus = 'recreational',
): readonly MuscleDose[] {
  const doses = new Map<MuscleId, MuscleDose>();
  for (const done of work) {
    requireNumber('muscleDose', 'sets', done.sets, 0, 100);
    requireNumber('muscleDose', 'repsInReserve', done.repsInReserve ?? 0, 0, 50);
    requireNumber('muscleDose', 'stagesPastFailure', done.stagesPastFailure ?? 0, 0, 10);
    const manner = {
      repsInReserve: done.repsInReserve ?? 0,
      stagesPastFailure: done.stagesPastFailure ?? 0,
      loweringHeavy: done.loweringHeavy ?? false,
      unaccustomed: newness(done, status),
    };
    for (const { muscle, weight } of roles(done)) {
      const before = doses.get(muscle) ?? { muscle, countedSets: 0, hardSets: 0 };
      const counted = weight * done.sets;
      doses.set(muscle, {
        muscle,
        countedSets: before.countedSets + counted,
        hardSets: before.hardSets + counted * setCost(manner, muscle),
      });
    }
  }
  return [...doses.values()]
    .filter(({ hardSets }) => hardSets > 0)
    .sort((a, b) => b.hardSets - a.hardSets || (a.muscle < b.muscle ? -1 : 1));
}

function newness(done: TrainedSets, status: TrainingStatus): number {
  if (done.likeSessionsDaysAgo) return unaccustomedShare(done.likeSessionsDaysAgo);
  return status === 'new' ? 1 : 0;
}

function roles({ exercise, variant }: TrainedSets): { muscle: MuscleId; weight: number }[] {
  const { direct, indirect } = variant?.direct
    ? { direct: variant.direct, indirect: variant.indirect ?? {} }
    : exercise;
  const isDirect = (muscle: string) => (direct[muscle as MuscleId] ?? 0) > 0;
  const named = (shares: object) => Object.keys(shares) as MuscleId[];
  return [
    ...named(direct)
      .filter(isDirect)
      .map((muscle) => ({ muscle, weight: 1 })),
    ...named(indirect)
      .filter((muscle) => (indirect[muscle] ?? 0) > 0 && !isDirect(muscle))
      .map((muscle) => ({ muscle, weight: recoveryModel.indirect.weight })),
  ];
}
