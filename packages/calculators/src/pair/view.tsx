import { inSentence } from '@windlass/core/basis';
import { formatNumber } from '../ui/formatNumber.ts';
import { MuscleChart } from '../ui/MuscleChart.tsx';
import { words } from '../words.ts';
import type { PairResult } from './compute.ts';
import { said } from './words.ts';

/** What is left of every muscle of the compound lift at its first repetition. */
export function PairView({ result }: { readonly result: PairResult }) {
  const bars = result.muscles.map(({ name, share, left, without }) => ({
    name,
    note: said.partOf(percent(share)),
    share: left,
    mark: without,
  }));
  const named = bars.map(({ name, share }) => said.muscle(inSentence(name), percent(share)));
  return (
    <>
      <p class="wl-pieces-label">{said.left}</p>
      <MuscleChart bars={bars} says={said.drawing(named)} />
    </>
  );
}

function percent(share: number): string {
  return words.chance.percent(formatNumber(share * 100, 0));
}
