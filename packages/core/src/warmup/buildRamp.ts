import { changeLoading, type Handling, type ReachableLoad } from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import type { WarmupSet } from './capacityKept.ts';
import { chooseRamp } from './chooseRamp.ts';
import { draftStep, type StepDraft } from './draftStep.ts';
import type { RampStep } from './Ramp.ts';
import type { RampGear } from './rampGear.ts';
import { rampRules } from './rampRules.ts';
import { rampSets } from './rampSets.ts';
import type { RampSettings } from './rampSettings.ts';
import { writeStep } from './writeStep.ts';

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

function withLastRest(drafts: readonly StepDraft[]): readonly StepDraft[] {
  return drafts.map((draft, index) =>
    index === drafts.length - 1 ? restingAtLeast(draft, rampRules.lastRestSeconds) : draft,
  );
}

function aboveDraft(draft: StepDraft): StepDraft {
  return restingAtLeast(draft, rampRules.aboveRestSeconds);
}

function restingAtLeast(draft: StepDraft, seconds: number): StepDraft {
  return { ...draft, restSeconds: Math.max(seconds, draft.restSeconds) };
}

/** The one repetition above the work load. */
function aboveSet({ secondsPerRep, shareOfMax, restSeconds }: StepDraft): WarmupSet {
  return { reps: 1, secondsPerRep, shareOfMax, restSeconds };
}
