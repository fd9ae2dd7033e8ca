import type { Band } from '../basis/index.ts';
import {
  type CapacityState,
  capacityFor,
  depositReps,
  repCost,
  repsUntil,
  restCapacity,
} from '../capacity/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import {
  forecastReps,
  kappaAtTempo,
  kappaBand,
  type LoadChance,
  type StrengthPosterior,
} from '../strength/index.ts';
import type { WorkSet } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';

export interface WorkSetsQuestion {
  readonly lift: Lift;
  readonly posterior: StrengthPosterior;
  readonly work: LoadChance<ReachableLoad>;
  readonly secondsPerRep: number;
  readonly repsInReserve: number;
  /** State of the muscles before the first set. */
  readonly start: CapacityState;
}

/** The sets of a lift at one load, each with the fatigue of those before it. */
export interface WorkSets {
  readonly sets: readonly WorkSet[];
  /** State of the muscles after the last set, before any rest. */
  readonly end: CapacityState;
}

/** What every work set will probably give, from the one capacity state that all lifts share. */
export function workSets(question: WorkSetsQuestion): WorkSets {
  const { lift, posterior, work, secondsPerRep, repsInReserve, start } = question;
  const { shares, intent } = lift;
  const intensity = work.share.likely;
  const kappa = kappaAtTempo(kappaBand(posterior).likely, secondsPerRep).kappa.likely;
  const cost = repCost({ intensity, kappa, alpha: posterior.alpha });
  const sets: WorkSet[] = [];
  let state = start;
  for (let set = 0; set < intent.sets; set += 1) {
    if (set > 0) state = restCapacity(state, intent.restSeconds);
    const capacity = capacityFor(state, shares);
    const forecast = forecastReps(posterior, { load: work.choice.load, secondsPerRep, capacity });
    const reps = lessReserve(forecast.reps, repsInReserve);
    sets.push({
      reps,
      seconds: times(reps, secondsPerRep),
      capacity,
      chance: chanceInside(forecast.chances, intent.window, repsInReserve),
    });
    const possible = repsUntil(capacity, intensity, cost);
    state = depositReps(state, shares, Math.max(0, possible - repsInReserve), cost);
  }
  return { sets, end: state };
}

function lessReserve({ low, likely, high, level }: Band, left: number): Band {
  const done = (reps: number) => Math.max(0, reps - left);
  return { low: done(low), likely: done(likely), high: done(high), level };
}

function times({ low, likely, high, level }: Band, factor: number): Band {
  return { low: low * factor, likely: likely * factor, high: high * factor, level };
}

function chanceInside(
  chances: readonly number[],
  { minReps, maxReps }: Lift['intent']['window'],
  left: number,
): number {
  const inside = chances.slice(minReps + left, maxReps + left + 1);
  return inside.reduce((sum, chance) => sum + chance, 0);
}
