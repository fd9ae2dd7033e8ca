import { toKg, toLb } from '@windlass/core/load';
import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords } from '../shared/loadWords.ts';
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
