import { type ChainRefusal, type NearestChain, planChain, type Stage } from '../extension/index.ts';
import type { Refusal } from './LiftPlan.ts';
import type { LiftQuestion } from './planLift.ts';
import { stageWords } from './stageWords.ts';

/** The stages of a lift's last set, or why the set stays an ordinary one. */
export interface AllowedChain {
  readonly stages?: readonly Stage[];
  readonly refused: readonly Refusal[];
}

/** Whether the last set of a lift may go on past lifting failure as it is wanted, here and for this person. */
export function allowedChain({ lift, client, limits, skipChain }: LiftQuestion): AllowedChain {
  const { chain } = lift.intent;
  if (!chain || skipChain) return { refused: [] };
  const stages: readonly Stage[] = [{ kind: 'lift' }, ...chain.stages];
  const plan = planChain(stages, {
    exercise: lift.exercise,
    partner: !client.alone,
    stops: chain.stops ?? false,
    limits,
    switchedOn: chain.switchedOn ?? false,
  });
  if (plan.kind === 'allowed') return { stages, refused: [] };
  return { refused: plan.refusals.map((refusal) => refusalOf(refusal, plan.nearest)) };
}

function refusalOf({ code, why, instead }: ChainRefusal, nearest: NearestChain): Refusal {
  const words = [why, instead, nearestWords(nearest)].filter((part) => part !== '');
  return { what: 'chain', code, message: words.join(' ') };
}

function nearestWords(nearest: NearestChain): string {
  if (nearest.kind === 'none') return '';
  if (nearest.kind === 'stop-short') {
    return `Nearest to it: end the set with ${nearest.repsInReserve} repetitions left.`;
  }
  const [, ...further] = nearest.stages;
  return further.length > 0 ? `Nearest to it: ${further.map(stageWords).join(', then ')}.` : '';
}
