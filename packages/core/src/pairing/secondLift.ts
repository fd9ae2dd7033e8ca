import type { Band } from '../basis/index.ts';
import { repCost, repsUntil } from '../capacity/index.ts';
import { toKg } from '../load/index.ts';
import { shareForReps } from '../strength/index.ts';
import type { PairForecast, PairInput } from './Pair.ts';
import { paceCurve } from './paceCurve.ts';
import { pairRules } from './pairRules.ts';

/** Load and repetitions of the compound lift, from its capacity without the isolation set and what that
 * takes of it if all of it shows. */
export function secondLift(
  compound: PairInput['compound'],
  without: number,
  drop: number,
): Pick<PairForecast, 'loadShare' | 'loadKg' | 'repsAtUsualLoad' | 'sharePerRep'> {
  const curve = paceCurve(compound);
  const { load, reps } = compound.usual;
  const usualShare = shareForReps(reps, curve);
  const costPerRep = repCost({ intensity: usualShare, ...curve });
  const left = (transfer: number) => Math.max(LEAST, without - transfer * drop);
  const loadShare = falling(pairRules.transfer, (transfer) => {
    return shareForReps(reps, curve, left(transfer)) / usualShare;
  });
  const kg = toKg(load);
  return {
    loadShare,
    loadKg: falling(pairRules.transfer, (transfer) => {
      return (kg * shareForReps(reps, curve, left(transfer))) / usualShare;
    }),
    repsAtUsualLoad: falling(widened(pairRules.transfer), (transfer) =>
      Math.floor(repsUntil(left(transfer), usualShare, costPerRep) + ROUNDING),
    ),
    sharePerRep: 1 - shareForReps(reps + 1, curve) / usualShare,
  };
}

/** What a quantity does that falls as the transfer grows: its low end belongs to the high transfer. */
function falling({ low, likely, high, level }: Band, of: (transfer: number) => number): Band {
  return { low: of(high), likely: of(likely), high: of(low), level };
}

/** Repetitions also carry the spread of endurance; independent spreads add as squares. */
function widened({ low, likely, high, level }: Band): Band {
  const endurance = TENTH * pairRules.enduranceLogSd;
  const wider = (end: number) => Math.hypot(Math.log(end / likely), endurance);
  return {
    low: likely * Math.exp(-wider(low)),
    likely,
    high: likely * Math.exp(wider(high)),
    level,
  };
}

/** Standard deviations from the middle to the ends of a band of level 0.8. */
const TENTH = 1.281_551_565_544_6;
/** Capacity that is never gone under, so that a load is still found after very much work. */
const LEAST = 0.05;
/** Far above double rounding and far below a repetition: a count that is whole stays whole. */
const ROUNDING = 1e-9;
