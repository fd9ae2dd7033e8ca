import {
  type ChainForecast,
  type ChainSetting,
  type ChainTrace,
  chainTrace,
  forecastChain,
  type LiveSetPlan,
  planChain,
  type Stage,
} from '@windlass/core/extension';
import { loadFromValue } from '@windlass/core/load';
import {
  type Caution,
  cautionsFor,
  limitsFor,
  type StopRule,
  stopRulesFor,
} from '@windlass/core/safety';
import { enduranceCurves } from '@windlass/core/strength';
import { secondsPerRep } from '@windlass/core/tempo';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import { type ChainLift, chainLifts } from '../precomputed/chainLifts.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import { clientOf } from '../shared/healthFields.ts';
import type { ChainInput } from './fields.ts';
import { longestSeconds } from './longestSeconds.ts';
import { refusedChain } from './refusedChain.tsx';
import { stagesOf } from './stagesOf.ts';
import { said } from './words.ts';

export interface ChainResult {
  readonly exercise: ChainLift;
  readonly stages: readonly Stage[];
  readonly intensity: number;
  readonly paceSeconds: number;
  readonly forecast: ChainForecast;
  readonly trace: ChainTrace;
  readonly cautions: readonly Caution[];
  readonly stopRules: readonly StopRule[];
  readonly live: LiveSetPlan;
}

/** Any seed would do; the same one gives the same bands on every page and in the code. */
export const SEED = 1;

/** The chain with its forecast, or every reason against it with the nearest one that is offered. */
export function computeChain(input: ChainInput): Computed<ChainResult> {
  const stages = stagesOf(input);
  const setting = settingOf(input);
  const { exercise } = setting;
  const { client, context } = askedOf(input);
  const cautions = cautionsFor(client, context);
  const plan = planChain(stages, setting);
  if (plan.kind === 'refused') return refusedChain(input, plan, cautions);
  const intensity = shareOf(input);
  if (intensity < 0.2) return outside('too-light', said.tooLight);
  if (intensity > 1.1) return outside('too-heavy', said.tooHeavy);
  const paceSeconds = secondsPerRep(input.tempo);
  if (paceSeconds < 1 || paceSeconds > 60) return outside('pace', said.wrongPace);
  const curve = enduranceCurves[exercise.endurance];
  const question = { stages, exercise, intensity, secondsPerRep: paceSeconds, curve, seed: SEED };
  const forecast = forecastChain(question);
  return {
    kind: 'result',
    result: {
      exercise,
      stages,
      intensity,
      paceSeconds,
      forecast,
      trace: chainTrace(question),
      cautions,
      stopRules: stopRulesFor(client),
      live: {
        exerciseId: exercise.id,
        load: input.load,
        stages,
        secondsPerRep: paceSeconds,
        maxSeconds: longestSeconds(forecast),
      },
    },
  };
}

/** Who is asked what, for limits and cautions. */
export function askedOf(input: ChainInput) {
  const loweringHeavy = stagesOf(input).some(({ kind }) => kind === 'lower');
  return {
    client: { ...clientOf(input), loweringHeavyWork: input.before },
    context: { alone: input.company === 'alone', loweringHeavy },
  };
}

function settingOf(input: ChainInput): ChainSetting & { readonly exercise: ChainLift } {
  const { client, context } = askedOf(input);
  return {
    exercise: exerciseOf(chainLifts, input.exercise),
    partner: input.company === 'partner',
    stops: input.stops === 'yes',
    switchedOn: input.switchedOn === 'yes',
    limits: limitsFor(client, context),
  };
}

function shareOf({ heaviness, load, max, share }: ChainInput): number {
  return heaviness === 'share' ? share / 100 : loadFromValue(load) / loadFromValue(max);
}

function outside(reason: string, message: string): NoAnswer {
  return { kind: 'none', reason, headline: said.noForecast, message };
}
