import { oneRepMaxKg } from '../strength/index.ts';
import type { SetDone } from './doSet.ts';
import type { PlannedLift } from './LiftPlan.ts';
import type { LoadedLift } from './loadedLift.ts';

/** The plan of a loaded lift, with what its sets will probably give. */
export function plannedLift(
  { known, load, warmUp }: LoadedLift,
  done: readonly SetDone[],
): PlannedLift {
  const chain = done.at(-1)?.chain;
  const { question, posterior, basis } = known;
  const { work, reason, lighter, heavier } = load;
  return {
    kind: 'planned',
    lift: question.lift,
    secondsPerRep: known.secondsPerRep,
    ...(question.limits.estimatedMaxima.kind === 'allowed' && {
      oneRepMaxKg: oneRepMaxKg(posterior, 0.8, 'today'),
    }),
    repsInReserve: known.repsInReserve,
    work,
    reason,
    ...(lighter && { lighter }),
    ...(heavier && { heavier }),
    warmUp: warmUp.warmUp,
    sets: done.map(({ set }) => set),
    ...(chain && { chain }),
    basis,
    ...(question.chosenFor && { chosenFor: question.chosenFor }),
    overruled: { ...question.overruled, ...load.overruled, ...warmUp.overruled },
    refused: [...question.refused, ...load.refused, ...warmUp.refused],
  };
}
