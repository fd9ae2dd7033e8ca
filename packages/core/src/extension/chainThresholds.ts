import { requireNumber } from '../basis/index.ts';

/** A load, and how much more than lifting a muscle can hold and lower. */
export interface ThresholdInput {
  /** Load as a share of the one-rep max. */
  readonly intensity: number;
  /** Holding strength against lifting strength, 1 or more. */
  readonly isometric: number;
  /** Lowering strength against lifting strength, 1 or more. */
  readonly eccentric: number;
  /** The load's turning effect where it is held, as a share of the full one, above 0; 1 when left out. */
  readonly momentArm?: number;
}

/** The capacity below which each kind of work ends, as shares of fresh lifting strength. */
export interface ChainThresholds {
  readonly lift: number;
  readonly hold: number;
  readonly lower: number;
}

/**
 * The capacity that lifting, holding and lowering a load ask for: `x`, `x·m / isometric` and
 * `x / eccentric`. At full turning effect they descend in this order, because a muscle can hold
 * more than it can lift and lower more than it can hold; so one load can carry all three.
 *
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { chainThresholds } from '@windlass/core/extension';
 * chainThresholds({ intensity: 0.75, isometric: 1.25, eccentric: 1.5 }); // { lift: 0.75, hold: 0.6, lower: 0.5 }
 * ```
 */
export function chainThresholds({
  intensity,
  isometric,
  eccentric,
  momentArm = 1,
}: ThresholdInput): ChainThresholds {
  requireNumber('chainThresholds', 'intensity', intensity, 0);
  requireNumber('chainThresholds', 'isometric', isometric, 1);
  requireNumber('chainThresholds', 'eccentric', eccentric, 1);
  requireNumber('chainThresholds', 'momentArm', momentArm, Number.MIN_VALUE);
  return {
    lift: intensity,
    hold: (intensity * momentArm) / isometric,
    lower: intensity / eccentric,
  };
}
