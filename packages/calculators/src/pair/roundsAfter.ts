import {
  type CapacityState,
  capacityFor,
  capacityTrace,
  depositReps,
  repCost,
  repsUntil,
  restCapacity,
} from '@windlass/core/capacity';
import { type PairForecast, type PairInput, planPair } from '@windlass/core/pairing';
import { shareForReps } from '@windlass/core/strength';
import { curveAtPace } from './curveAtPace.ts';
import type { PairInputs } from './fields.ts';

/** A round of the pair; `spent` where a helper no longer allows one. */
export type Round =
  | { readonly kind: 'round'; readonly isolationReps: number; readonly forecast: PairForecast }
  | { readonly kind: 'spent'; readonly why: string };

/** What `planPair` takes as repetitions left at most. */
const MOST_LEFT = 10;

/**
 * The rounds of a pair, each from what the one before and the rest have left. The isolation set
 * keeps its load and has fewer repetitions when its muscles are tired; the compound set is taken to
 * failure as the forecast says, with the likely load or for the likely repetitions.
 */
export function roundsAfter(
  question: PairInput,
  first: PairForecast,
  atCompound: CapacityState,
  { rounds, rest, ask }: Pick<PairInputs, 'rounds' | 'rest' | 'ask'>,
): readonly Round[] {
  const shares = sharesOf(question.compound);
  const done: Round[] = [
    { kind: 'round', isolationReps: question.isolation.reps, forecast: first },
  ];
  let forecast = first;
  let state = atCompound;
  while (done.length < rounds) {
    const { reps, costPerRep } = compoundSet(question, forecast, ask);
    const start = restCapacity(depositReps(state, shares, reps, costPerRep), rest);
    const isolation = tiredIsolation(question, start);
    const plan = planPair({ ...question, isolation, start });
    if (plan.kind === 'refused') {
      return [...done, { kind: 'spent', why: plan.refusals[0]?.why ?? '' }];
    }
    state = capacityTrace({ shares, steps: plan.steps, start }).end;
    forecast = plan;
    done.push({ kind: 'round', isolationReps: isolation.reps, forecast });
  }
  return done;
}

/** The isolation set with the load of the first round: what it does not reach counts as left. */
function tiredIsolation({ isolation }: PairInput, start: CapacityState): PairInput['isolation'] {
  const curve = curveAtPace(isolation);
  const whole = isolation.reps + isolation.repsLeft;
  const intensity = shareForReps(whole, curve);
  const capacity = capacityFor(start, sharesOf(isolation));
  const possible = repsUntil(capacity, intensity, repCost({ intensity, ...curve }));
  const wanted = Math.floor(possible) - isolation.repsLeft;
  const reps = Math.min(isolation.reps, Math.max(1, whole - MOST_LEFT, wanted));
  return { ...isolation, reps, repsLeft: whole - reps };
}

function compoundSet({ compound }: PairInput, forecast: PairForecast, ask: PairInputs['ask']) {
  const curve = curveAtPace(compound);
  const usual = shareForReps(compound.usual.reps, curve);
  const intensity = ask === 'load' ? usual * forecast.loadShare.likely : usual;
  return {
    reps: ask === 'load' ? compound.usual.reps : forecast.repsAtUsualLoad.likely,
    costPerRep: repCost({ intensity, ...curve }),
  };
}

function sharesOf({ exercise: { direct, indirect } }: PairInput['isolation' | 'compound']) {
  return { ...direct, ...indirect };
}
