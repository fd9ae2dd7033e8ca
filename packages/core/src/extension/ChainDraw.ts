import type { FatigueRates } from '../capacity/index.ts';

/** One possible lifter, as a forecast draws them. */
export interface ChainDraw {
  /** Endurance constant at the pace of the set. */
  readonly kappa: number;
  readonly alpha: number;
  readonly intensity: number;
  readonly isometric: number;
  readonly eccentric: number;
  readonly partRange: number;
  /** Of a hold. */
  readonly rates: FatigueRates;
  /** Of a lowering past failure. */
  readonly loweringRates: FatigueRates;
  readonly restPerSecond: number;
}
