import { inSentence } from '@windlass/core/basis';
import { formatPercent } from '../ui/formatPercent.ts';
import { MuscleChart } from '../ui/MuscleChart.tsx';
import type { PairResult } from './compute.ts';
import { said } from './words.ts';

/** What is left of every muscle of the compound lift at its first repetition. */
export function PairView({ result }: { readonly result: PairResult }) {
  const bars = result.muscles.map(({ name, share, left, without }) => ({
    name,
    note: said.partOf(formatPercent(share)),
    share: left,
    mark: without,
  }));
  const named = bars.map(({ name, share }) => said.muscle(inSentence(name), formatPercent(share)));
  return (
    <>
      <p class="wl-pieces-label">{said.left}</p>
      <MuscleChart bars={bars} says={said.drawing(named)} />
    </>
  );
}
