import { loadFromValue } from '@windlass/core/load';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { TrialChart } from '../ui/TrialChart.tsx';
import { type FirstLoadResult, loadOf } from './compute.ts';
import { type FirstLoadInput, fields } from './fields.ts';
import { said } from './words.ts';

interface FirstLoadViewProps {
  readonly input: FirstLoadInput;
  readonly result: FirstLoadResult;
}

/** Four trial sets and the work set. */
const PLACES = 5;
/** While it goes on, the next column has somewhere to go. */
const HEADROOM = 1.5;

/** The search so far and its next set, as columns. */
export function FirstLoadView({ input, result }: FirstLoadViewProps) {
  const { step } = result;
  const { show } = input;
  const next = loadOf(step).shown;
  const loads = input.tries.map(({ load }) => loadFromValue(load));
  const isTrial = step.kind === 'try';
  const top = Math.max(next, ...loads) * (isTrial ? HEADROOM : 1);
  const label = (load: typeof next) => formatNumber(loadFace(load, show).exact, 1);
  const done = input.tries.map(({ reps, felt }, at) => {
    const load = loads[at] ?? next;
    return {
      label: label(load),
      height: load / top,
      reps,
      note: feltWords(felt),
      isNext: false,
    };
  });
  const columns = [
    ...done,
    {
      label: label(next),
      height: next / top,
      reps: isTrial ? step.reps : null,
      note: isTrial ? said.next : said.workSet,
      isNext: true,
    },
  ];
  const sets = input.tries.map(({ reps, felt }, at) =>
    said.chartSet(loadWords(loads[at] ?? next, show), reps, feltWords(felt)),
  );
  return (
    <>
      <p class="wl-pieces-label">{said.loadIn(show)}</p>
      <TrialChart
        columns={columns}
        places={PLACES}
        says={said.chart(sets, loadWords(next, show))}
      />
    </>
  );
}

/** How a report reads in the form. */
export function feltWords(felt: string): string {
  return fields.tries.columns.felt.options.find(({ id }) => id === felt)?.label ?? felt;
}
