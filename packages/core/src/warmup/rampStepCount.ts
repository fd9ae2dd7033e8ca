import type { Load } from '../load/index.ts';
import { openingLoad } from './openingLoad.ts';
import { rampRules } from './rampRules.ts';

/** What decides how many steps a ramp has. */
export interface StepCountQuestion {
  readonly lightest: Load;
  readonly work: Load;
  readonly workShare: number;
  readonly alreadyWarm: number;
  readonly technical: boolean;
}

/**
 * How many steps a ramp gets: more the further the work load is from the opening load and the
 * nearer it is to the one-rep max; fewer when the muscles are warm, down to one for heavy and none
 * for light work. A technical lift counts as not warm.
 */
export function rampStepCount(question: StepCountQuestion): number {
  const { lightest, work, workShare, technical } = question;
  const distance = Math.log(work / openingLoad(lightest, work));
  const cold = Math.round(demandOf(workShare) * (1 + rampRules.stepsPerLogDistance * distance));
  const steps = Math.min(cold, rampRules.mostSteps);
  const warm = technical ? 0 : question.alreadyWarm;
  const kept = Math.round(steps * (1 - warm)) + (workShare >= rampRules.warmStepFrom ? 1 : 0);
  return Math.min(steps, kept);
}

function demandOf(workShare: number): number {
  const { noDemandBelow, fullDemandAt, mostDemand } = rampRules;
  const demand = (workShare - noDemandBelow) / (fullDemandAt - noDemandBelow);
  return Math.min(mostDemand, Math.max(0, demand));
}
