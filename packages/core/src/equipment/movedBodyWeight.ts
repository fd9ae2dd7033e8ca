import { requireNumber } from '../basis/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import type { MovedShare } from './Equipment.ts';

/** The part of a body weight that is moved: over the positions of a repetition, and half way. */
export interface MovedBodyWeight {
  readonly low: Load;
  readonly middle: Load;
  readonly high: Load;
}

/** Body weight times the lowest and the highest share; the whole body without a share. */
export function movedBodyWeight(
  bodyWeight: Load,
  share: MovedShare = { low: 1, high: 1 },
): MovedBodyWeight {
  requireNumber('equipment', 'bodyWeight in steps', bodyWeight, 1);
  requireNumber('equipment', 'movedShare.high', share.high, 0.01, 1);
  requireNumber('equipment', 'movedShare.low', share.low, 0.01, share.high);
  return {
    low: scaleLoad(bodyWeight, share.low),
    middle: scaleLoad(bodyWeight, share.low + share.high, 2),
    high: scaleLoad(bodyWeight, share.high),
  };
}
