import { changeLoading, type Handling, type ReachableLoad } from '../equipment/index.ts';
import { purposeOf } from './purposeOf.ts';
import { rampRules } from './rampRules.ts';
import type { SetPlan } from './rampSets.ts';
import type { RampSettings } from './rampSettings.ts';

/** A step before its repetitions are settled. */
export interface StepDraft extends SetPlan {
  readonly load: ReachableLoad;
  readonly shareOfWork: number;
  readonly change: Handling;
}

/** A step between the loads before and after it, with the rest that its purpose and hands ask for. */
export function draftStep(
  load: ReachableLoad,
  before: ReachableLoad | undefined,
  after: ReachableLoad,
  { work, workShare, secondsPerRep, secondsPerPiece }: RampSettings,
): StepDraft {
  const shareOfWork = load.load / work;
  const { pieces } = changeLoading(load.loading, after.loading);
  const handlingSeconds = 5 * Math.ceil((pieces * secondsPerPiece) / 5);
  return {
    load,
    shareOfWork,
    shareOfMax: shareOfWork * workShare,
    secondsPerRep,
    change: changeLoading(before?.loading ?? 'nothing', load.loading),
    restSeconds: Math.max(rampRules.restSeconds[purposeOf(shareOfWork)], handlingSeconds),
  };
}
