import { type Exercise, sharesOf } from '../anatomy/index.ts';
import { requireNumber } from '../basis/index.ts';
import { NINE_IN_TEN } from '../recovery/nineInTen.ts';
import {
  enduranceCurves,
  kappaBand,
  oneRepMaxKg,
  type StrengthPosterior,
  type StrengthPrior,
} from '../strength/index.ts';

/** Which exercise takes the place of which, and what is known. */
export interface CarryOverQuestion {
  readonly from: Exercise;
  readonly to: Exercise;
  /** What is known of the lifter on the old exercise. */
  readonly posterior: StrengthPosterior;
  /**
   * What the coach holds likely for the new one-rep max against the old, 0.05 to 20: 1.05 to 1.2
   * for a trap bar after a straight bar. Left out, no load is carried over.
   */
  readonly ratio?: { readonly low: number; readonly high: number };
}

/** What a new exercise starts from. */
export interface CarriedOver {
  readonly prior: StrengthPrior;
  readonly carried: readonly ('endurance' | 'strength')[];
  /** Share of the work that both exercises give to the same muscles, 0 to 1. */
  readonly sharedWork: number;
  readonly says: string;
}

/** Spread of ln kappa between exercises of one kind in the same person; chosen, not measured. */
const BETWEEN_EXERCISES = 0.2;
/**
 * What carries over when one exercise takes the place of another. Each exercise keeps a history of
 * its own.
 *
 * Endurance carries over between exercises of the same kind, a little less surely; otherwise the
 * published curve of the new kind is the start. Strength carries over only by a ratio that a coach
 * gives, as the range it is: there is no conversion factor that holds for everybody. Without one
 * the first load is looked for by `findingProtocol`. The first session starts at the low end.
 *
 * @throws RangeError for a ratio out of range or upside down.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { kg } from '@windlass/core/load';
 * import { carryOver } from '@windlass/core/progress';
 * import { enduranceCurves, priorFor, strengthFrom } from '@windlass/core/strength';
 * const set = { load: kg(45), reps: 8, end: { kind: 'failure' }, day: 0 } as const;
 * const posterior = strengthFrom({ sets: [set], prior: priorFor(enduranceCurves.pull), today: 0 });
 * const [from, to] = [findExercise('cable-row'), findExercise('cable-pulldown')];
 * if (from?.kind === 'found' && to?.kind === 'found' && posterior.kind === 'posterior') {
 *   const { carried } = carryOver({ from: from.exercise, to: to.exercise, posterior });
 *   carried; // ['endurance']
 * }
 * ```
 */
export function carryOver({ from, to, posterior, ratio }: CarryOverQuestion): CarriedOver {
  const curve = enduranceCurves[to.endurance];
  const sameKind = from.endurance === to.endurance;
  const kappa = kappaBand(posterior, 0.8);
  const kappaSd = Math.log(kappa.high / kappa.low) / (2 * NINE_IN_TEN);
  const lnKappa = sameKind
    ? { mean: Math.log(kappa.likely), sd: Math.hypot(kappaSd, BETWEEN_EXERCISES) }
    : { mean: Math.log(curve.kappa), sd: curve.kappaLogSd };
  const lnMax = ratio ? strengthBy(posterior, ratio) : undefined;
  const carried = [
    ...(sameKind ? (['endurance'] as const) : []),
    ...(lnMax ? (['strength'] as const) : []),
  ];
  return {
    prior: { lnKappa, alpha: curve.alpha, ...(lnMax ? { lnMax } : {}) },
    carried,
    sharedWork: sharedWork(from, to),
    says: lnMax
      ? 'The load is a wide estimate from the ratio given: begin at its low end and go by the repetitions left.'
      : 'No load is carried over: look for the first one with light trial sets.',
  };
}

function strengthBy(
  posterior: StrengthPosterior,
  { low, high }: { readonly low: number; readonly high: number },
): { readonly mean: number; readonly sd: number } {
  requireNumber('carryOver', 'ratio.low', low, 0.05, 20);
  requireNumber('carryOver', 'ratio.high', high, low, 20);
  const max = oneRepMaxKg(posterior);
  const own = Math.log(max.high / max.low) / (2 * NINE_IN_TEN);
  const spread = Math.log(high / low) / (2 * NINE_IN_TEN);
  return {
    mean: Math.log(max.likely) + (Math.log(low) + Math.log(high)) / 2,
    sd: Math.max(1e-3, Math.hypot(own, spread)),
  };
}

function sharedWork(from: Exercise, to: Exercise): number {
  const [one, other] = [sharesOf(from), sharesOf(to)];
  return Object.entries(one).reduce(
    (sum, [muscle, share]) => sum + Math.min(share ?? 0, other[muscle as keyof typeof other] ?? 0),
    0,
  );
}
