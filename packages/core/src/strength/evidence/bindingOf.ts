import type { PerformedSet } from '../PerformedSet.ts';
import type { Binding } from '../StrengthPosterior.ts';

/** Which side the sets bind the one-rep max from, given what bound it before. */
export function bindingOf(sets: readonly PerformedSet[], before: Binding): Binding {
  const floor = before !== 'prior-only' && before !== 'ceiling-only';
  const ceiling = before !== 'prior-only' && before !== 'floor-only';
  const low = floor || sets.some(({ end, reps }) => end.kind !== 'failure' || reps > 0);
  const high = ceiling || sets.some(({ end }) => end.kind !== 'more');
  if (low && high) return 'both-sides';
  if (low) return 'floor-only';
  return high ? 'ceiling-only' : 'prior-only';
}
