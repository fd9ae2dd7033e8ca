import { type Band, requireNumber } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import { NINE_IN_TEN } from '../recovery/nineInTen.ts';
import {
  generalCurve,
  repsAtShare,
  type SourcedRepCurve,
  shareForReps,
} from '../strength/index.ts';

/** What a load gives in place of the usual one. */
export interface OtherLoad {
  /** Repetitions to failure with it; 0 when it is too heavy for one. */
  readonly reps: Band;
  /**
   * `stands-in`: the count stays within a quarter of the usual. `too-light` and `too-heavy`: it
   * cannot stand in for the usual set with the same repetitions.
   */
  readonly standing: 'stands-in' | 'too-light' | 'too-heavy';
  /** For a load that is too light: how to bring the repetitions down, one at a time. */
  readonly ways: readonly { readonly id: HarderWay; readonly says: string }[];
  /** Tag for the log, so that progression passes over such sets. */
  readonly tag: 'travel';
}

/** A way to make a light load harder. */
export type HarderWay = 'slower-lowering' | 'pause' | 'one-side' | 'near-failure';

/**
 * What the loads of another gym give: on a trip, in a hotel, at home.
 *
 * By the rep curve, over people with other endurance than the usual. The same repetitions with a
 * lighter load are neither progress nor a failure; they are logged with the tag `travel`.
 *
 * @param usual load more than 0, with repetitions to failure, 1 to 100.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { repsWithOtherLoad } from '@windlass/core/progress';
 * const hotel = repsWithOtherLoad({ load: kg(30), reps: 8 }, kg(20));
 * hotel.standing; // 'too-light'
 * Math.round(hotel.reps.likely); // 24
 * ```
 */
export function repsWithOtherLoad(
  usual: { readonly load: Load; readonly reps: number },
  other: Load,
  curve: SourcedRepCurve = generalCurve,
): OtherLoad {
  requireNumber('repsWithOtherLoad', 'usual.load in steps', usual.load, 1);
  requireNumber('repsWithOtherLoad', 'usual.reps', usual.reps, 1, 100);
  requireNumber('repsWithOtherLoad', 'other in steps', other, 1);
  const at = (kappa: number) => {
    const bent = { ...curve, kappa };
    const share = (other / usual.load) * shareForReps(usual.reps, bent);
    return share > 1 ? 0 : repsAtShare(share, bent);
  };
  const spread = Math.exp(NINE_IN_TEN * curve.kappaLogSd);
  const likely = at(curve.kappa);
  const ends = [at(curve.kappa / spread), at(curve.kappa * spread)];
  const standing =
    likely > 1.25 * usual.reps
      ? 'too-light'
      : likely < 0.75 * usual.reps
        ? 'too-heavy'
        : 'stands-in';
  return {
    reps: { low: Math.min(...ends), likely, high: Math.max(...ends), level: 0.8 },
    standing,
    ways: standing === 'too-light' ? harder : [],
    tag: 'travel',
  };
}

const harder: OtherLoad['ways'] = [
  {
    id: 'slower-lowering',
    says: 'Take four or five seconds to lower: fewer repetitions are possible.',
  },
  { id: 'pause', says: 'Stop for a second or two where the lift is hardest.' },
  {
    id: 'one-side',
    says: 'One side at a time with the weight in one hand, where the exercise allows.',
  },
  { id: 'near-failure', says: 'Otherwise many repetitions, to near failure.' },
];
