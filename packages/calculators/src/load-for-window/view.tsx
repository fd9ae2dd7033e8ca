import { toKg, toLb } from '@windlass/core/load';
import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords } from '../shared/loadWords.ts';
import { ChanceChart } from '../ui/ChanceChart.tsx';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { said } from './words.ts';

interface WindowViewProps {
  readonly input: WindowInput;
  readonly result: WindowResult;
}

/** Loads with a smaller chance would only squeeze the others together. */
const WORTH_SEEING = 0.025;

/** How the load is made, and the chance of every load around it. */
export function WindowView({ input, result }: WindowViewProps) {
  const { answer } = result;
  const { best } = answer;
  const { show, window } = input;
  const worthSeeing = answer.all.filter((one) => one.inside >= WORTH_SEEING || one === best);
  const convert = show === 'kg' ? toKg : toLb;
  const points = worthSeeing.map((one) => ({
    value: convert(one.choice.shown),
    label: formatNumber(convert(one.choice.shown), 1),
    chance: one.inside,
    isBest: one === best,
  }));
  const says = said.chart(
    window.low,
    window.high,
    loadWords(best.choice.shown, show),
    formatChance(best.inside),
  );
  return (
    <>
      <p class="wl-pieces">{loadingWords(best.choice)}</p>
      <p class="wl-soft">{said.chanceByLoad(show)}</p>
      <ChanceChart points={points} says={says} />
    </>
  );
}
