import { longestSeconds } from '@windlass/calculators/live';
import {
  type ChainRefusal,
  forecastChain,
  type LiveSetPlan,
  planChain,
  type Stage,
} from '@windlass/core/extension';
import { loadValue } from '@windlass/core/load';
import { limitsFor } from '@windlass/core/safety';
import { enduranceCurves } from '@windlass/core/strength';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { FloorState } from '../run/FloorState.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { isSameChain } from '../session/isSameChain.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { doneLifts } from './doneLifts.ts';

/** What is there when a set is to go on past failure. */
export interface ChainHelp {
  readonly partner: boolean;
  readonly stops: boolean;
}

/** A way to go on past failure, or why not in this way. */
export type ChainChoice =
  | {
      readonly kind: 'offered';
      readonly stages: readonly Stage[];
      readonly plan: LiveSetPlan;
      /** As the session has it planned. */
      readonly isPlanned: boolean;
    }
  | {
      readonly kind: 'refused';
      readonly stages: readonly Stage[];
      readonly refusals: readonly ChainRefusal[];
    };

/** Any seed would do; the same one gives the same longest time. */
const SEED = 1;

/**
 * The ways in which the set that comes next can go on past lifting failure, as this person's limits,
 * the exercise and the help that is there allow; the planned way first, and once.
 *
 * @returns nothing where the lift has no known load yet.
 */
export function chainChoices(
  planned: Planned,
  session: FloorSession,
  state: FloorState,
  help: ChainHelp,
): readonly ChainChoice[] {
  const step = session.steps[state.step];
  const lift = doneLifts(planned)[step?.lift ?? -1];
  const load = stepLoad(session, state, state.step);
  if (lift?.kind !== 'planned' || !load) return [];
  const { exercise } = lift.lift;
  const { client } = planned.question;
  const intensity = lift.work.share.likely * (load.load / lift.work.choice.load);
  const own = step?.chain?.plan;
  const others = waysFor(exercise.holds[0]?.at).filter(
    (stages) => !own || !isSameChain({ stages }, own),
  );
  return [...(own ? [own.stages] : []), ...others].map((stages): ChainChoice => {
    const isPlanned = stages === own?.stages;
    const loweringHeavy = stages.some(({ kind }) => kind === 'lower');
    const context = { alone: !help.partner, loweringHeavy, date: session.date } as const;
    const chain = planChain(stages, {
      exercise,
      ...help,
      switchedOn: true,
      limits: limitsFor(client.health, context),
    });
    if (chain.kind === 'refused') return { kind: 'refused', stages, refusals: chain.refusals };
    const forecast = forecastChain({
      stages,
      exercise,
      intensity: Math.min(1.1, Math.max(0.2, intensity)),
      secondsPerRep: lift.secondsPerRep,
      curve: enduranceCurves[exercise.endurance],
      seed: SEED,
    });
    const plan: LiveSetPlan = {
      exerciseId: exercise.id,
      load: loadValue(load.shown, session.unit),
      stages,
      secondsPerRep: lift.secondsPerRep,
      maxSeconds: longestSeconds(forecast),
    };
    return {
      kind: 'offered',
      stages,
      plan: isPlanned ? { ...own, load: plan.load } : plan,
      isPlanned,
    };
  });
}

const lift: Stage = { kind: 'lift' };
const lower: Stage = { kind: 'lower', secondsEach: 5, maxLowerings: 3 };

/** What is offered, mildest first. */
function waysFor(
  at: 'stretched' | 'middle' | 'contracted' = 'middle',
): readonly (readonly Stage[])[] {
  const hold: Stage = { kind: 'hold', at, maxSeconds: 10 };
  return [
    [lift, { kind: 'pause', seconds: 15 }],
    [lift, { kind: 'lighter', loadShare: 0.8 }],
    [lift, { kind: 'part-range', maxReps: 5 }],
    [lift, hold],
    [lift, lower],
    [lift, hold, lower],
    [lift, { kind: 'assisted', reps: 2 }],
  ];
}
