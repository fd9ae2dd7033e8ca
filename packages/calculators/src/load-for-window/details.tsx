import type { ReachableLoad } from '@windlass/core/equipment';
import { forecastDoubts, type LoadChance } from '@windlass/core/strength';
import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { words } from '../words.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { SetCapacity } from './SetCapacity.tsx';

interface WindowDetailsProps {
  readonly input: WindowInput;
  readonly result: WindowResult;
}

/** The loads around the best one with their chances, the set as it will go, and what weakens the forecast. */
export function WindowDetails({ input, result }: WindowDetailsProps) {
  const { answer, choices, paceSeconds } = result;
  const { best, careful, lighter, heavier } = answer;
  const named: readonly (readonly [string, LoadChance<ReachableLoad> | undefined])[] = [
    ['For a first try', careful === best ? undefined : careful],
    ['Next lighter', lighter === careful ? undefined : lighter],
    ['Best chance', best],
    ['Next heavier', heavier],
  ];
  const rows = named
    .flatMap(([name, one]) => (one ? [{ name, one }] : []))
    .sort((a, b) => a.one.choice.load - b.one.choice.load);
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">Loads around it</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">Load</th>
              <th scope="col" class="wl-figure">
                Too soon
              </th>
              <th scope="col" class="wl-figure">
                Inside
              </th>
              <th scope="col" class="wl-figure">
                Beyond
              </th>
              <th scope="col" class="wl-figure">
                Reps
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
          Reps to failure: likely, and what 8 of 10 sets lie between. Here {choices.loads.length} of{' '}
          {choices.total} loads were weighed up
          {choices.mostPieces === null
            ? '.'
            : `, those with at most ${choices.mostPieces} plates to carry.`}
        </p>
      </section>
      <section class="wl-panel">
        <h2 class="wl-heading">The set, second by second</h2>
        <SetCapacity result={result} />
        <p class="wl-soft">
          At {formatNumber(paceSeconds, 1)} s a rep the lift fails where what is left crosses what
          the load asks.
        </p>
      </section>
      {best.doubts.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">What weakens this forecast</h2>
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
  const percent = (chance: number) => words.chance.percent(formatNumber(chance * 100, 0));
  const { choice, before, inside, beyond, reps } = one;
  return (
    <tr data-chosen={isBest ? 'true' : undefined}>
      <th scope="row">
        {loadWords(choice.shown, unit)}
        <span class="wl-row-note">
          {name}: {loadingWords(choice)}
        </span>
      </th>
      <td class="wl-figure">{percent(before)}</td>
      <td class="wl-figure">{percent(inside)}</td>
      <td class="wl-figure">{percent(beyond)}</td>
      <td class="wl-figure">
        {formatNumber(reps.likely, 0)}
        <span class="wl-row-note">
          {formatNumber(reps.low, 0)} to {formatNumber(reps.high, 0)}
        </span>
      </td>
    </tr>
  );
}
