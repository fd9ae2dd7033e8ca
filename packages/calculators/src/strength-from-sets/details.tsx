import { kappaBand, type SetContribution } from '@windlass/core/strength';
import { kappaOfPeople } from '../shared/kappaOfPeople.ts';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';
import { aboutSet, setName } from './names.ts';
import { OneMorePanel } from './OneMorePanel.tsx';
import { repsAtEighty } from './repsAtEighty.ts';
import { said } from './words.ts';

interface StrengthDetailsProps {
  readonly input: StrengthInput;
  readonly result: StrengthResult;
}

/** Sets that disagree, what each set told, endurance in words, and what one more set would do. */
export function StrengthDetails({ input, result }: StrengthDetailsProps) {
  const { told, belief, curve } = result;
  const off = told.filter(({ disagrees }) => disagrees);
  const own = repsAtEighty(kappaBand(belief), belief.alpha);
  const people = repsAtEighty(kappaOfPeople(curve), curve.alpha);
  return (
    <>
      {off.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.conflict}</h2>
          <ul class="wl-sources">
            {off.map(({ set, slipChance }, at) => (
              <li key={at}>{said.slip(setName(set, input), formatChance(slipChance))}</li>
            ))}
            {said.conflictWhat.map((what) => (
              <li key={what}>{what}</li>
            ))}
          </ul>
        </section>
      )}
      <section class="wl-panel">
        <h2 class="wl-heading">{said.told}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.set}</th>
              <th scope="col" class="wl-figure">
                {said.columns.expected}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.told}
              </th>
            </tr>
          </thead>
          <tbody>
            {told.map((one, at) => (
              <ToldRow
                key={at}
                one={one}
                isFirst={one.set.day === told[0]?.set.day}
                isAlone={told[1]?.set.day !== told[0]?.set.day}
                input={input}
              />
            ))}
          </tbody>
        </table>
        <p class="wl-soft">{said.toldNote}</p>
      </section>
      <OneMorePanel input={input} result={result} />
      <section class="wl-panel">
        <h2 class="wl-heading">{said.enduranceHead}</h2>
        <p>
          {said.enduranceWords(
            formatNumber(own.low, 0),
            formatNumber(own.high, 0),
            formatNumber(people.low, 0),
            formatNumber(people.high, 0),
          )}
        </p>
        <p class="wl-soft">{said.enduranceNote}</p>
      </section>
    </>
  );
}

interface ToldRowProps {
  readonly one: SetContribution;
  /** Of the first day, with nothing before it. */
  readonly isFirst: boolean;
  /** The first day has one set. */
  readonly isAlone: boolean;
  readonly input: StrengthInput;
}

function ToldRow({ one, isFirst, isAlone, input }: ToldRowProps) {
  const { set, expected, narrowed, disagrees } = one;
  return (
    <tr>
      <th scope="row">
        {setName(set, input)}
        <span class="wl-row-note">{aboutSet(set)}</span>
      </th>
      <td class="wl-figure">
        {isFirst ? '' : said.span(formatNumber(expected.low, 0), formatNumber(expected.high, 0))}
      </td>
      <td class="wl-figure">
        {disagrees && said.off}
        <span class="wl-row-note">
          {isFirst && isAlone ? said.begins : narrowedWords(narrowed)}
        </span>
      </td>
    </tr>
  );
}

function narrowedWords(narrowed: number): string {
  if (Math.round(narrowed * 100) === 0) return said.nothingNew;
  return narrowed > 0
    ? said.narrowed(formatPercent(narrowed))
    : said.widened(formatPercent(-narrowed));
}
