import type { ReachableLoad } from '@windlass/core/equipment';
import { toKg, toLb } from '@windlass/core/load';
import { loadWords, pieceWords } from '../shared/loadWords.ts';
import { plateWords } from '../shared/plateWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { ChanceChart } from '../ui/ChanceChart.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import type { WindowInput, WindowResult } from './compute.ts';

interface WindowViewProps {
  readonly input: WindowInput;
  readonly result: WindowResult;
}

/** How the load is made, and the chance of every load around it. */
export function WindowView({ input, result }: WindowViewProps) {
  const { answer } = result;
  const { best } = answer;
  const { show, window } = input;
  const worthSeeing = answer.all.filter((one) => one.inside >= 0.01 || one === best);
  const convert = show === 'kg' ? toKg : toLb;
  const points = worthSeeing.map((one) => ({
    value: convert(one.choice.shown),
    label: loadWords(one.choice.shown, show),
    chance: one.inside,
    isBest: one === best,
  }));
  const says = `Chance that failure falls within ${window.low} to ${window.high} reps, by load: highest at ${loadWords(best.choice.shown, show)} with ${formatNumber(best.inside * 100, 0)} %. The table below has the figures.`;
  return (
    <>
      <p class="wl-pieces">{loadingWords(best.choice)}</p>
      <p class="wl-soft">Chance that failure falls in the window, load by load</p>
      <ChanceChart points={points} says={says} />
    </>
  );
}

/** How a load is put together, in a few words. */
export function loadingWords(choice: ReachableLoad): string {
  const { loading } = choice;
  switch (loading.kind) {
    case 'plates':
      return `each side ${plateWords(sideOf(choice)) || 'nothing'}`;
    case 'fixed':
      return `the pair of ${pieceWords(loading.weight)}`;
    case 'pin':
      return `pin at ${pieceWords(loading.pin)}${loading.addOns.map((addOn) => ` + ${pieceWords(addOn)} on top`).join('')}`;
    case 'assistance':
      return `${pieceWords(loading.added)} of help`;
  }
}
