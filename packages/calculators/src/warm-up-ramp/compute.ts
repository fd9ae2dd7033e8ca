import { nearestLoad, type ReachableLoad, reachableLoads } from '@windlass/core/equipment';
import type { LoadValue, Unit } from '@windlass/core/load';
import { shareForReps } from '@windlass/core/strength';
import { planRamp, type RampPlan, type RampQuestion } from '@windlass/core/warmup';
import type { Computed } from '../contract/Definition.ts';
import { type GearInput, gearOf } from '../shared/gearFields.ts';
import { movedLoad } from '../shared/gearLoad.ts';
import { said } from './words.ts';

export interface RampInput extends GearInput {
  readonly work: LoadValue;
  readonly possible: number;
  readonly starts: 'rack' | 'floor';
  readonly warm: 'fresh' | 'partly' | 'worked';
  readonly technical: 'no' | 'yes';
  readonly experience: 'trained' | 'new';
  readonly above: 'off' | 'stops' | 'no-stops';
  readonly show: Unit;
}

export interface RampResult {
  readonly plan: RampPlan;
  /** The work load that the equipment can make, nearest to the one that was asked for. */
  readonly work: ReachableLoad;
  readonly isExact: boolean;
  readonly workShare: number;
}

const ALREADY_WARM = { fresh: 0, partly: 0.5, worked: 1 } as const;

/** Nothing lighter than this share of the one-rep max is ramped up to. */
const LIGHTEST_SHARE = 0.2;

/** The ramp to the nearest load that the equipment can make. */
export function computeRamp(input: RampInput): Computed<RampResult> {
  const { equipment, use } = gearOf(input);
  const choice = nearestLoad(reachableLoads(equipment, use), movedLoad(input.work, input));
  if (choice.kind === 'none') {
    const { reason, message } = choice;
    return { kind: 'none', reason, headline: said.noLoad, message };
  }
  const plan = planRamp(rampQuestion(input, choice.chosen));
  if (plan.kind !== 'ramp') {
    const { reason, message } = plan;
    const headline = plan.kind === 'no-ramp' ? said.notNeeded : said.noRamp;
    return { kind: 'none', reason, headline, message };
  }
  const isExact = choice.kind === 'exact';
  return {
    kind: 'result',
    result: { plan, work: choice.chosen, isExact, workShare: shareOfMax(input) },
  };
}

/** The question as the library takes it. */
export function rampQuestion(input: RampInput, work: ReachableLoad): RampQuestion {
  const { experience, warm, technical, starts, above, gear } = input;
  return {
    ...gearOf(input),
    work: work.load,
    workShare: shareOfMax(input),
    experience,
    alreadyWarm: ALREADY_WARM[warm],
    technical: technical === 'yes',
    fromFloor: gear === 'bar' && starts === 'floor',
    ...(above === 'off' ? {} : { aboveWork: { loadCanBeStopped: above === 'stops' } }),
  };
}

function shareOfMax({ possible }: RampInput): number {
  return Math.max(LIGHTEST_SHARE, shareForReps(possible));
}
