import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { RampChart } from '../ui/RampChart.tsx';
import type { RampInput, RampResult } from './compute.ts';
import { setsOf } from './setsOf.ts';
import { said } from './words.ts';

interface RampViewProps {
  readonly input: RampInput;
  readonly result: RampResult;
}

/** The ramp as stairs. */
export function RampView({ input, result }: RampViewProps) {
  const sets = setsOf(result);
  const heaviest = Math.max(...sets.map(({ load }) => load.load));
  const columns = sets.map(({ load, reps }) => ({
    label: formatNumber(loadFace(load.shown, input.show).exact, 1),
    height: load.load / heaviest,
    reps,
  }));
  const named = sets.map(({ load, reps }) => said.set(loadWords(load.shown, input.show), reps));
  return (
    <>
      <p class="wl-pieces-label">{said.columns(input.show)}</p>
      <RampChart columns={columns} says={said.drawing(named)} />
    </>
  );
}
