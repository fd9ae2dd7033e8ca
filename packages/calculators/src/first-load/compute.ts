import {
  type Counts,
  type LoadList,
  type ReachableLoad,
  reachableLoads,
} from '@windlass/core/equipment';
import {
  type FindingQuestion,
  type FindingReport,
  type FindingStep,
  type FindingTry,
  findingProtocol,
} from '@windlass/core/strength';
import { secondsPerRep } from '@windlass/core/tempo';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import { gearOf } from '../shared/gearFields.ts';
import { movedLoad } from '../shared/gearLoad.ts';
import { curveOf } from '../shared/liftField.ts';
import { loadWords } from '../shared/loadWords.ts';
import type { FirstLoadInput } from './fields.ts';
import { type TrialLoads, trialLoads } from './trialLoads.ts';
import { said } from './words.ts';

type Step = FindingStep<ReachableLoad>;

/** What comes next in the search: another trial set, or a load to work with. */
export type NextStep = Extract<Step, { kind: 'try' | 'found' | 'start-and-learn' }>;

interface Search {
  readonly question: FindingQuestion<ReachableLoad>;
  readonly step: Step;
  readonly trial: TrialLoads;
}

export interface FirstLoadResult extends Search {
  readonly step: NextStep;
  /** Everything that the equipment makes. */
  readonly loads: LoadList['loads'];
  readonly counts: Counts;
}

/** The next step of the search for a first load. */
export function computeFirstLoad(input: FirstLoadInput): Computed<FirstLoadResult> {
  const { equipment, use } = gearOf(input);
  const gym = reachableLoads(equipment, use);
  if (gym.kind === 'none') return none(gym.reason, said.noLoad, gym.message);
  const tries = input.tries.map(
    ({ load, reps, felt }): FindingTry => ({
      load: movedLoad(load, input),
      reps,
      report: reportOf(felt),
    }),
  );
  const { question, step, trial } = search(input, gym.loads, tries);
  if (step.kind === 'no-loads') return none(step.kind, said.noLoad, said.weighsNothing);
  if (step.kind === 'all-too-heavy') {
    const lightest = loadWords(step.lightest.shown, input.show);
    return none(step.kind, said.tooHeavy, said.takeLighter(lightest));
  }
  const { loads, counts } = gym;
  return { kind: 'result', result: { loads, question, step, counts, trial } };
}

/** The step after these trial sets, and the loads that were looked at for it. */
export function search(
  { window, tempo, lift }: FirstLoadInput,
  loads: LoadList['loads'],
  tries: readonly FindingTry[],
): Search {
  const tried = tries.map(({ load }) => load);
  const trial = trialLoads(loads, tried);
  const question = {
    choices: trial.loads,
    window: { minReps: window.low, maxReps: window.high },
    secondsPerRep: secondsPerRep(tempo),
    curve: curveOf(lift),
    tries,
  };
  return { question, step: findingProtocol(question), trial };
}

/** The load of the next set, trial or work. */
export function loadOf(step: NextStep): ReachableLoad {
  return step.kind === 'try' ? step.choice : step.load.choice;
}

/** A choice of the form as the library takes it. */
export function reportOf(felt: FirstLoadInput['tries'][number]['felt']): FindingReport {
  if (felt === 'far-too-easy' || felt === 'failed' || felt === 'form-broke') return felt;
  return { repsLeft: Number(felt) };
}

function none(reason: string, headline: string, message: string): NoAnswer {
  return { kind: 'none', reason, headline, message };
}
