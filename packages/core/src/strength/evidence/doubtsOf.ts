import { toKg } from '../../load/index.ts';
import type { ForecastDoubt } from '../ForecastDoubt.ts';
import type { SetConditions } from '../PerformedSet.ts';
import type { StrengthPosterior } from '../StrengthPosterior.ts';
import { tempoLaw } from '../tempoLaw.ts';

/** What makes a forecast of this set less sure. */
export function doubtsOf(
  posterior: StrengthPosterior,
  { load, secondsPerRep }: SetConditions,
  likely: { readonly oneRepMaxKg: number; readonly reps: number },
): readonly ForecastDoubt[] {
  const doubts: ForecastDoubt[] = [];
  if (toKg(load) < 0.5 * likely.oneRepMaxKg) doubts.push('light-load');
  if (likely.reps > 20) doubts.push('many-reps');
  if (secondsPerRep === undefined) doubts.push('pace-unknown');
  else if (secondsPerRep < tempoLaw.rangeSeconds[0]) doubts.push('pace-too-fast');
  else if (secondsPerRep > tempoLaw.rangeSeconds[1]) doubts.push('pace-too-slow');
  if (posterior.binding !== 'both-sides') doubts.push(posterior.binding);
  return doubts;
}
