import type { Band } from '../basis/index.ts';
import {
  type CapacityState,
  capacityFor,
  depositReps,
  repCost,
  repsUntil,
} from '../capacity/index.ts';
import { forecastReps, kappaAtTempo, kappaBand } from '../strength/index.ts';
import { chainedSet } from './chainedSet.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import type { WorkSet } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import type { LoadedLift } from './loadedLift.ts';
import type { PlannedChain } from './PlannedChain.ts';
import { together } from './together.ts';

/** A set, and what the lift's own sets have left of its muscles after it. */
export interface SetDone {
  readonly set: WorkSet;
  readonly own: CapacityState;
  /** Where it goes on past lifting failure. */
  readonly chain?: PlannedChain;
}

/** Capacity that is never gone under, so that a forecast is still made after very much work. */
const LEAST_CAPACITY = 0.05;

/** One work set at its load: what it will probably give, and what it takes. */
export function doSet(loaded: LoadedLift, fatigue: LiftFatigue, isLast: boolean): SetDone {
  const { known, load } = loaded;
  const { own, carried } = fatigue;
  const { question, posterior, secondsPerRep } = known;
  const chained = isLast && known.chain ? chainedSet(loaded, fatigue, known.chain) : undefined;
  const repsInReserve = chained ? 0 : known.repsInReserve;
  const { shares, intent } = question.lift;
  const { work } = load;
  const intensity = work.share.likely;
  const kappa = kappaAtTempo(kappaBand(posterior).likely, secondsPerRep).kappa.likely;
  const cost = repCost({ intensity, kappa, alpha: posterior.alpha });
  const capacity = capacityFor(together(own, carried), shares);
  const forecast = forecastReps(posterior, {
    load: work.choice.load,
    secondsPerRep,
    capacity: Math.max(LEAST_CAPACITY, capacity),
  });
  const reps = lessReserve(forecast.reps, repsInReserve);
  const done = Math.max(0, repsUntil(capacity, intensity, cost) - repsInReserve);
  return {
    set: {
      reps,
      seconds: times(reps, secondsPerRep),
      capacity,
      chance: chanceInside(forecast.chances, intent.window, repsInReserve),
    },
    own: chained
      ? depositReps(own, shares, 1, Math.max(done * cost, capacity - chained.capacityLeft))
      : depositReps(own, shares, done, cost),
    ...(chained && { chain: chained.chain }),
  };
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
