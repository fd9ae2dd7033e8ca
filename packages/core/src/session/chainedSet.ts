import { exerciseFatigue } from '../capacity/index.ts';
import {
  chainNeeds,
  chainTimes,
  forecastChain,
  type Stage,
  type StageForecast,
} from '../extension/index.ts';
import { kappaBand } from '../strength/index.ts';
import { forecastPace } from './forecastPace.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import type { Lift } from './liftOf.ts';
import type { LoadedLift } from './loadedLift.ts';
import { notForChains } from './notForChains.ts';
import type { PlannedChain } from './PlannedChain.ts';
import { together } from './together.ts';

/** The same plan for the same question: the draws of a forecast begin here. */
const SEED = 1;
/** Standard deviations between the ends of a band of level 0.8. */
const ENDS_APART = 2 * 1.2816;
/** What `forecastChain` takes as a share of the one-rep max. */
const INTENSITY = { least: 0.2, most: 1.1 };

/** What to expect of a set that goes on past lifting failure, and the capacity it leaves. */
export function chainedSet(
  { known, load }: LoadedLift,
  { own, carried }: LiftFatigue,
  stages: readonly Stage[],
): { readonly chain: PlannedChain; readonly capacityLeft: number } {
  const { posterior, secondsPerRep, question } = known;
  const { exercise, shares } = question.lift;
  const kappa = kappaBand(posterior);
  const forecast = forecastChain({
    stages,
    exercise,
    intensity: Math.min(Math.max(load.work.share.likely, INTENSITY.least), INTENSITY.most),
    secondsPerRep: forecastPace(secondsPerRep),
    curve: {
      kappa: kappa.likely,
      alpha: posterior.alpha,
      kappaLogSd: Math.log(kappa.high / kappa.low) / ENDS_APART,
    },
    fatigue: exerciseFatigue(together(own, carried), shares),
    seed: SEED,
  });
  const chain: PlannedChain = {
    stages: forecast.stages,
    secondsUnderLoad: forecast.secondsUnderLoad,
    addedSeconds: addedSeconds(forecast.stages, question.lift),
    dose: forecast.dose,
    needs: chainNeeds(stages, exercise),
    notes: forecast.notes,
    notFor: notForChains,
  };
  return { chain, capacityLeft: forecast.stages.at(-1)?.capacityLeft.likely ?? 1 };
}

function addedSeconds(stages: readonly StageForecast[], { exercise }: Lift): number {
  const sides = exercise.sides === 'one' ? 2 : 1;
  const further = stages.slice(1);
  const each = further.map((one) => one.secondsUnderLoad.likely + offLoad(one, exercise.wayBack));
  return sides * each.reduce((sum, seconds) => sum + seconds, 0);
}

/** Seconds of a stage with the load off. */
function offLoad({ stage, count }: StageForecast, wayBack: Lift['exercise']['wayBack']): number {
  switch (stage.kind) {
    case 'pause':
      return stage.seconds;
    case 'lighter':
      return chainTimes.changeSeconds;
    case 'lower':
      return chainTimes.resetSeconds[wayBack] * Math.max(0, (count?.likely ?? 0) - 1);
    default:
      return 0;
  }
}
