import type { ReachableLoad } from '@windlass/core/equipment';
import { forecastDoubts, type LoadChance } from '@windlass/core/strength';
import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { SetCapacity } from './SetCapacity.tsx';
import { said } from './words.ts';

interface WindowDetailsProps {
  readonly input: WindowInput;
  readonly result: WindowResult;
}

/** The loads around the best one with their chances, the set as it will go, and what weakens the forecast. */
export function WindowDetails({ input, result }: WindowDetailsProps) {
  const { answer, choices, paceSeconds } = result;
  const { best, careful, lighter, heavier } = answer;
  const named: readonly (readonly [string, LoadChance<ReachableLoad> | undefined])[] = [
    [said.firstTry, careful === best ? undefined : careful],
    [said.lighter, lighter === careful ? undefined : lighter],
    [said.bestChance, best],
    [said.nextHeavier, heavier],
  ];
  const rows = named
    .flatMap(([name, one]) => (one ? [{ name, one }] : []))
    .sort((a, b) => a.one.choice.load - b.one.choice.load);
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.around}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.load}</th>
              <th scope="col" class="wl-figure">
                {said.columns.soon}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.inside}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.beyond}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.reps}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, one }) => (
              <ChanceRow key={name} name={name} one={one} isBest={one === best} unit={input.show} />
            ))}
          </tbody>
        </table>
        <p class="wl-soft">
          {choices.mostPieces === null
            ? said.weighed(choices.loads.length, choices.total)
            : said.weighedFew(choices.loads.length, choices.total, choices.mostPieces)}
        </p>
      </section>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.second}</h2>
        <SetCapacity result={result} />
        <p class="wl-soft">{said.crosses(formatNumber(paceSeconds, 1))}</p>
      </section>
      {best.doubts.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.doubts}</h2>
          <ul class="wl-sources">
            {best.doubts.map((doubt) => (
              <li key={doubt}>{forecastDoubts[doubt].reason}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

interface ChanceRowProps {
  readonly name: string;
  readonly one: LoadChance<ReachableLoad>;
  readonly isBest: boolean;
  readonly unit: WindowInput['show'];
}

function ChanceRow({ name, one, isBest, unit }: ChanceRowProps) {
  const { choice, before, inside, beyond, reps } = one;
  return (
    <tr data-chosen={isBest ? 'true' : undefined}>
      <th scope="row">
        {loadWords(choice.shown, unit)}
        <span class="wl-row-note">{said.row(name, loadingWords(choice))}</span>
      </th>
      <td class="wl-figure">{formatChance(before)}</td>
      <td class="wl-figure">{formatChance(inside)}</td>
      <td class="wl-figure">{formatChance(beyond)}</td>
      <td class="wl-figure">
        {formatNumber(reps.likely, 0)}
        <span class="wl-row-note">
          {said.span(formatNumber(reps.low, 0), formatNumber(reps.high, 0))}
        </span>
      </td>
    </tr>
  );
}
