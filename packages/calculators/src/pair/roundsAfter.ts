import {
  type CapacityState,
  capacityTrace,
  depositReps,
  repCost,
  restCapacity,
} from '@windlass/core/capacity';
import { type PairForecast, type PairInput, planPair } from '@windlass/core/pairing';
import { enduranceCurves, kappaAtTempo, shareForReps } from '@windlass/core/strength';
import type { PairInputs } from './fields.ts';

/** A round of the pair; `spent` where a helper no longer allows one. */
export type Round =
  | { readonly kind: 'round'; readonly forecast: PairForecast }
  | { readonly kind: 'spent'; readonly why: string };

/**
 * The rounds of a pair, each from what the one before and the rest have left. The compound set is
 * taken to failure as the forecast says: with the likely load, or for the likely reps.
 */
export function roundsAfter(
  question: PairInput,
  first: PairForecast,
  atCompound: CapacityState,
  { rounds, rest, ask }: Pick<PairInputs, 'rounds' | 'rest' | 'ask'>,
): readonly Round[] {
  const shares = {
    ...question.compound.exercise.direct,
    ...question.compound.exercise.indirect,
  };
  const done: Round[] = [{ kind: 'round', forecast: first }];
  let forecast = first;
  let state = atCompound;
  while (done.length < rounds) {
    const { reps, costPerRep } = compoundSet(question, forecast, ask);
    const start = restCapacity(depositReps(state, shares, reps, costPerRep), rest);
    const plan = planPair({ ...question, start });
    if (plan.kind === 'refused') {
      return [...done, { kind: 'spent', why: plan.refusals[0]?.why ?? '' }];
    }
    state = capacityTrace({ shares, steps: plan.steps, start }).end;
    forecast = plan;
    done.push({ kind: 'round', forecast });
  }
  return done;
}

function compoundSet({ compound }: PairInput, forecast: PairForecast, ask: PairInputs['ask']) {
  const { kappa, alpha } = enduranceCurves[compound.exercise.endurance];
  const atPace = kappaAtTempo(kappa, compound.secondsPerRep).kappa.likely;
  const usual = shareForReps(compound.usual.reps, { kappa: atPace, alpha });
  const intensity = ask === 'load' ? usual * forecast.loadShare.likely : usual;
  return {
    reps: ask === 'load' ? compound.usual.reps : forecast.repsAtUsualLoad.likely,
    costPerRep: repCost({ intensity, kappa: atPace, alpha }),
  };
}
