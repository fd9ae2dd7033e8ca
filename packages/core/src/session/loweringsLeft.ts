import type { Exercise, MuscleId } from '../anatomy/index.ts';
import type { Stage } from '../extension/index.ts';
import type { Limits } from '../safety/index.ts';

/** An exercise whose last set goes on past lifting failure. */
export interface ChainedExercise {
  readonly exercise: Pick<Exercise, 'direct'>;
  readonly stages: readonly Stage[];
}

/**
 * A person's limits for one more exercise: where hard lowerings are limited for a muscle in one
 * session, those that earlier chains ask of the same prime movers are taken off.
 */
export function loweringsLeft(
  limits: Limits,
  { direct }: Pick<Exercise, 'direct'>,
  before: readonly ChainedExercise[],
): Limits {
  const { hardLowerings } = limits;
  if (!hardLowerings) return limits;
  const asked = (Object.keys(direct) as MuscleId[]).map((muscle) =>
    before
      .filter(({ exercise }) => exercise.direct[muscle])
      .reduce((sum, { stages }) => sum + loweringsIn(stages), 0),
  );
  const count = Math.max(0, hardLowerings.count - Math.max(0, ...asked));
  return { ...limits, hardLowerings: { ...hardLowerings, count } };
}

function loweringsIn(stages: readonly Stage[]): number {
  return stages.reduce((sum, stage) => sum + (stage.kind === 'lower' ? stage.maxLowerings : 0), 0);
}
