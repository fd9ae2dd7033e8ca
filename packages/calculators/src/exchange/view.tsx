import { muscleOverlap } from '@windlass/core/exchange';
import { formatPercent } from '../ui/formatPercent.ts';
import { MuscleChart } from '../ui/MuscleChart.tsx';
import type { ExchangeResult } from './compute.ts';
import { nameOf } from './nameOf.ts';
import { said } from './words.ts';

const DRAWN = 5;

/** The options in their order; instead of one exercise, with how much of its work each shares. */
export function ExchangeView({ result }: { readonly result: ExchangeResult }) {
  const { exercise, setUps, others } = result;
  const first = [...setUps, ...others].slice(0, DRAWN);
  if (exercise === null) return <Ranked names={first.map(nameOf)} />;
  const bars = first.map((option) => ({
    name: nameOf(option),
    share: muscleOverlap(exercise, option.exercise),
  }));
  const rows = bars.map(({ name, share }) => said.row(name, formatPercent(share)));
  return (
    <>
      <p class="wl-pieces-label">{said.shared}</p>
      <MuscleChart bars={bars} says={said.drawing(rows)} />
    </>
  );
}

function Ranked({ names }: { readonly names: readonly string[] }) {
  return (
    <>
      <p class="wl-pieces-label">{said.ranked}</p>
      <ol class="wl-steps">
        {names.map((name) => (
          <li key={name}>
            <strong>{name}</strong>
          </li>
        ))}
      </ol>
    </>
  );
}
