import type { LogDensity } from '../grid/Axis.ts';
import { momentsOf } from '../grid/momentsOf.ts';

/** Kappas further than this from the likely one are scaled no further: a factor of e. */
const MOST = 1;

/**
 * By how much changes of ln(one-rep max) are scaled in each row of kappa: so that in every row they
 * scatter counts as they do at the likely kappa, by `likely / kappa`.
 *
 * Endurance is learned from the counts at different loads, not from how widely the counts at one
 * load scatter: unscaled, a lifter with steadier days than most would be taken for one whose counts
 * hardly depend on the load, and a year of one load and one count would take half off kappa.
 */
export function scatterScale(belief: LogDensity): (lnKappa: number) => number {
  const likely = momentsOf(belief).rows.mean;
  return (lnKappa) => Math.exp(Math.max(-MOST, Math.min(MOST, likely - lnKappa)));
}
