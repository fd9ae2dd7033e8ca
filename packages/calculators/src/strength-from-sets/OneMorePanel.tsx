import type { Band } from '@windlass/core/basis';
import { toKg } from '@windlass/core/load';
import { formatPercent } from '../ui/formatPercent.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';
import { kgWords } from './names.ts';
import { oneMore } from './oneMore.ts';
import { said } from './words.ts';

interface OneMorePanelProps {
  readonly input: StrengthInput;
  readonly result: StrengthResult;
}

/** How the answer would move with the newest load once more, and how much narrower it would be. */
export function OneMorePanel({ input, result }: OneMorePanelProps) {
  const newest = heaviestOfNewest(result);
  if (newest === undefined) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.oneMore(kgWords(toKg(newest.load), input, 1))}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{said.oneMoreColumns.reps}</th>
            <th scope="col" class="wl-figure">
              {said.oneMoreColumns.max}
            </th>
            <th scope="col" class="wl-figure">
              {said.oneMoreColumns.width}
            </th>
          </tr>
        </thead>
        <tbody>
          {oneMore(result.belief, newest).map(({ reps, max }) => (
            <tr key={reps}>
              <th scope="row">{said.repsWords(reps)}</th>
              <td class="wl-figure">
                {kgWords(max.likely, input)}
                <span class="wl-row-note">
                  {said.span(kgWords(max.low, input), kgWords(max.high, input))}
                </span>
              </td>
              <td class="wl-figure">{width(max)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="wl-soft">{said.oneMoreNote(width(result.max))}</p>
    </section>
  );
}

/** The load of the newest day that a next set would most probably have: its heaviest. */
function heaviestOfNewest({ sets }: StrengthResult) {
  const day = sets.at(-1)?.day;
  return sets
    .filter((set) => set.day === day)
    .sort((a, b) => a.load - b.load)
    .at(-1);
}

function width({ low, likely, high }: Band): string {
  return formatPercent((high - low) / likely);
}
