import { toKg } from '@windlass/core/load';
import { forecastDoubts, type PerformedSet } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import { formatDate } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

interface LastTimePanelProps {
  readonly input: LogReviewInput;
  readonly result: LogReviewResult;
}

/** The sets of the last session beside what the sessions before it let expect. */
export function LastTimePanel({ input: { show }, result }: LastTimePanelProps) {
  const { beliefs, question } = result;
  const date = question.sessions.at(-1)?.date ?? '';
  const doubts = new Set(beliefs.lastTime.flatMap(({ against }) => against.doubts));
  const name = ({ load, reps }: PerformedSet) =>
    said.set(`${formatNumber(inUnit(toKg(load), show), 1)} ${show}`, reps);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.lastTime(formatDate(date))}</h2>
      {beliefs.lastTime.length === 0 && <p>{said.nothingBefore}</p>}
      {beliefs.lastTime.length > 0 && (
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.lastColumns.set}</th>
              <th scope="col" class="wl-figure">
                {said.lastColumns.expected}
              </th>
              <th scope="col" class="wl-figure">
                {said.lastColumns.done}
              </th>
            </tr>
          </thead>
          <tbody>
            {beliefs.lastTime.map(({ set, against: { expected, done, standing } }, place) => (
              <tr key={place}>
                <th scope="row">
                  {name(set)}
                  <span class="wl-row-note">{said.standings[standing]}</span>
                </th>
                <td class="wl-figure">
                  {said.span(formatNumber(expected.low, 0), formatNumber(expected.high, 0))}
                </td>
                <td class="wl-figure">{formatNumber(done, 1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="wl-soft">{said.lastNote}</p>
      {[...doubts].map((doubt) => (
        <p key={doubt} class="wl-soft">
          {forecastDoubts[doubt].reason}
        </p>
      ))}
    </section>
  );
}
