import { requireNumber } from '../../basis/index.ts';
import { toKg } from '../../load/index.ts';
import { evidenceModel, type RepCurve, shareForReps } from '../../strength/index.ts';
import type { SessionSet } from '../LiftSession.ts';

/** ln of the one-rep max in kg that a set speaks for, with the variance of what it says. */
export interface StrengthMeasure {
  readonly lnMax: number;
  readonly variance: number;
}

/**
 * What one set says about strength by a rep curve. Repetitions left are added, with the bias of
 * people who name them; how a set ended that was not noted is taken as failure.
 */
export function strengthMeasure(set: SessionSet, curve: RepCurve): StrengthMeasure {
  const { repeat, reserve } = evidenceModel;
  const { end } = set;
  const named = end?.kind === 'reserve' ? end.repsLeft : end?.kind === 'more' ? end.atLeast : 0;
  const left = named + (end?.kind === 'reserve' ? reserve.value.bias : 0);
  const reps = Math.max(1, set.reps + left);
  requireNumber('strengthMeasure', 'load in steps', set.load, 1);
  const spread = Math.hypot(
    repeat.value.base + repeat.value.perRep * reps,
    named > 0 ? reserve.value.spread + reserve.value.spreadPerRepLeft * named : 0,
  );
  const lnShare = (count: number) => Math.log(shareForReps(Math.max(1, count), curve));
  const slope = (lnShare(reps + 0.5) - lnShare(reps - 0.5)) / (reps < 1.5 ? reps - 0.5 : 1);
  return {
    lnMax: Math.log(toKg(set.load)) - lnShare(reps),
    variance: (slope * spread) ** 2,
  };
}
