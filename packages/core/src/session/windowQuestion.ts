import type { ReachableLoad } from '../equipment/index.ts';
import type { StrengthPosterior, WindowQuestion } from '../strength/index.ts';
import type { Lift } from './liftOf.ts';

/** What the load of a lift follows from, whoever chooses it. */
export interface WorkLoadQuestion {
  readonly lift: Lift;
  readonly posterior: StrengthPosterior;
  readonly secondsPerRep: number;
  /** Share of fresh strength at the first work set. */
  readonly capacity: number;
  /** Repetitions to be left; the window is of repetitions done. */
  readonly repsInReserve: number;
  /** Heaviest share of today's one-rep max that may be used. */
  readonly intensityCap: number;
}

/** The same for `loadForWindow`, with the window to failure, for some of the loads. */
export function windowQuestion(
  { lift, posterior, secondsPerRep, capacity, repsInReserve }: WorkLoadQuestion,
  choices: readonly ReachableLoad[],
): WindowQuestion<ReachableLoad> {
  const { minReps, maxReps } = lift.intent.window;
  return {
    posterior,
    choices,
    window: { minReps: minReps + repsInReserve, maxReps: maxReps + repsInReserve },
    secondsPerRep,
    capacity,
  };
}
