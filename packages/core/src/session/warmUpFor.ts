import type { MuscleId } from '../anatomy/index.ts';
import type { CapacityState } from '../capacity/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import { enduranceCurves, type LoadChance } from '../strength/index.ts';
import { givenRamp, planRamp, type RampAnswer, type RampQuestion } from '../warmup/index.ts';
import type { Client } from './Client.ts';
import { fixedWarmUp } from './fixedWarmUp.ts';
import { isSameWarmUp } from './isSameWarmUp.ts';
import type { LiftOverruled, Refusal } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';

export interface WarmUpQuestion {
  readonly lift: Lift;
  readonly work: LoadChance<ReachableLoad>;
  readonly experience: Client['experience'];
  readonly start: CapacityState;
  /** Muscles that earlier lifts of the session have worked. */
  readonly warm: ReadonlySet<MuscleId>;
  /** How many of the lightest sets a time limit takes. */
  readonly skipSteps: number;
}

/** The warm-up of a lift, and what became of one that somebody has fixed. */
export interface LiftWarmUp {
  readonly warmUp: RampAnswer;
  readonly overruled: Pick<LiftOverruled, 'warmUp'>;
  readonly refused: readonly Refusal[];
}

/** The warm-up sets of a lift in a session: fewer where earlier lifts have worked its muscles. */
export function warmUpFor(question: WarmUpQuestion): LiftWarmUp {
  const { lift, skipSteps } = question;
  const asked = lift.intent.overrules?.warmUp;
  const ramp = rampQuestion(question);
  const chosen = planRamp(ramp);
  if (asked !== undefined && !isSameWarmUp(asked, chosen)) {
    const fixed = fixedWarmUp(lift, ramp, asked);
    return fixed.kind === 'fixed'
      ? { warmUp: fixed.warmUp, overruled: { warmUp: { chosen } }, refused: [] }
      : { warmUp: chosen, overruled: {}, refused: [fixed.refusal] };
  }
  const warmUp =
    chosen.kind === 'ramp' && skipSteps > 0
      ? givenRamp(ramp, chosen.steps.slice(skipSteps), chosen.work)
      : chosen;
  return { warmUp, overruled: {}, refused: [] };
}

const WIDEST_SHARE = { least: 0.2, most: 1 };

function rampQuestion(question: WarmUpQuestion): RampQuestion {
  const { lift, work, experience, start, warm } = question;
  const { exercise, equipment, use, shares } = lift;
  const entries = Object.entries(shares) as [MuscleId, number][];
  const worked = entries.reduce((sum, [id, share]) => sum + (warm.has(id) ? share : 0), 0);
  return {
    equipment,
    use,
    work: work.choice.load,
    workShare: Math.min(Math.max(work.share.likely, WIDEST_SHARE.least), WIDEST_SHARE.most),
    experience: experience === 'new' ? 'new' : 'trained',
    curve: enduranceCurves[exercise.endurance],
    muscles: shares,
    start,
    alreadyWarm: Math.min(1, worked),
    fromFloor: exercise.movement === 'hip-hinge' && exercise.startsWith === 'lift',
  };
}
