import { changeLoading, type Handling, type ReachableLoad } from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import type { WarmupSet } from './capacityKept.ts';
import { chooseRamp } from './chooseRamp.ts';
import { purposeOf } from './purposeOf.ts';
import type { RampStep } from './Ramp.ts';
import type { RampGear } from './rampGear.ts';
import { rampRules } from './rampRules.ts';
import { rampSets, type SetPlan } from './rampSets.ts';
import type { RampSettings } from './rampSettings.ts';

/** A ramp for given targets. */
export interface BuiltRamp {
  readonly steps: readonly RampStep[];
  readonly above: RampStep | undefined;
  readonly work: ReachableLoad;
  readonly changeToWork: Handling;
  /** All sets in order, for the capacity. */
  readonly sets: readonly WarmupSet[];
  /** Whether the capacity is kept. */
  readonly enough: boolean;
}

/** The best loads for these targets, with their repetitions and rests. */
export function buildRamp(
  targets: readonly Load[],
  gear: RampGear,
  withAbove: boolean,
  settings: RampSettings,
): BuiltRamp {
  const { work, pieceCost, state, leastCapacity } = settings;
  const target = scaleLoad(work, 1 + rampRules.aboveWork);
  const choice = chooseRamp({
    targets,
    ways: gear.lighter,
    workWays: gear.workWays,
    ...(withAbove ? { above: { target, ways: gear.above } } : {}),
    work,
    pieceCost,
    growthCost: rampRules.growthCost,
  });
  const count = choice.steps.length;
  const loads = [...choice.steps, ...(choice.above ? [choice.above] : [])];
  const drafts = loads.map((load, index) =>
    draftStep(load, loads[index - 1], loads[index + 1] ?? choice.work, settings),
  );
  const [ramp, above] = [withLastRest(drafts.slice(0, count)), drafts.slice(count).map(aboveDraft)];
  const { sets, enough } = rampSets(ramp, above.map(aboveSet), state, leastCapacity);
  return {
    steps: ramp.map((draft, index) => writeStep(draft, sets[index] ?? aboveSet(draft))),
    above: above.map((draft) => writeStep(draft, aboveSet(draft)))[0],
    work: choice.work,
    changeToWork: changeLoading(loads.at(-1)?.loading ?? 'nothing', choice.work.loading),
    sets: [...sets, ...above.map(aboveSet)],
    enough,
  };
}

/** A step before its repetitions are settled. */
interface Draft extends SetPlan {
  readonly load: ReachableLoad;
  readonly shareOfWork: number;
  readonly change: Handling;
}

function draftStep(
  load: ReachableLoad,
  before: ReachableLoad | undefined,
  after: ReachableLoad,
  { work, workShare, secondsPerRep, secondsPerPiece }: RampSettings,
): Draft {
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

function withLastRest(drafts: readonly Draft[]): readonly Draft[] {
  return drafts.map((draft, index) =>
    index === drafts.length - 1 ? restingAtLeast(draft, rampRules.lastRestSeconds) : draft,
  );
}

function aboveDraft(draft: Draft): Draft {
  return restingAtLeast(draft, rampRules.aboveRestSeconds);
}

function restingAtLeast(draft: Draft, seconds: number): Draft {
  return { ...draft, restSeconds: Math.max(seconds, draft.restSeconds) };
}

/** The one repetition above the work load. */
function aboveSet({ secondsPerRep, shareOfMax, restSeconds }: Draft): WarmupSet {
  return { reps: 1, secondsPerRep, shareOfMax, restSeconds };
}

function writeStep({ load, shareOfWork, change }: Draft, set: WarmupSet): RampStep {
  return {
    purpose: purposeOf(shareOfWork),
    load,
    shareOfWork,
    reps: set.reps,
    seconds: set.reps * set.secondsPerRep,
    change,
    restSeconds: set.restSeconds,
  };
}
