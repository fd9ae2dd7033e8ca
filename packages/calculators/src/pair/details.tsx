import { inUnit } from '../shared/inUnit.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { PairResult } from './compute.ts';
import type { PairInputs } from './fields.ts';
import type { Round } from './roundsAfter.ts';
import { said } from './words.ts';

interface PairDetailsProps {
  readonly input: PairInputs;
  readonly result: PairResult;
}

/** Every round, and how to correct the load after the first try. */
export function PairDetails({ input, result }: PairDetailsProps) {
  const { rounds, forecast } = result;
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.rounds}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.round}</th>
              <th scope="col" class="wl-figure">
                {said.columns.isolation}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.load}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.reps}
              </th>
              <th scope="col" class="wl-figure">
                {said.columns.left}
              </th>
            </tr>
          </thead>
          <tbody>
            {rounds.map((round, place) =>
              round.kind === 'round' ? (
                <RoundRow key={place} number={place + 1} round={round} input={input} />
              ) : (
                <tr key={place}>
                  <td colSpan={5}>{said.spent(place + 1, round.why)}</td>
                </tr>
              ),
            )}
          </tbody>
        </table>
        <p class="wl-soft">{said.roundsSay(input.rest)}</p>
      </section>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.correct}</h2>
        <p>{said.correctSays(formatPercent(forecast.sharePerRep, 1))}</p>
      </section>
    </>
  );
}

interface RoundRowProps {
  readonly number: number;
  readonly round: Extract<Round, { kind: 'round' }>;
  readonly input: PairInputs;
}

function RoundRow({ number, round, input: { ask, show } }: RoundRowProps) {
  const { loadKg, repsAtUsualLoad, capacity } = round.forecast;
  const load = (kg: number) => formatNumber(inUnit(kg, show), 1);
  const reps = (count: number) => formatNumber(count, 0);
  return (
    <tr>
      <th scope="row">{number}</th>
      <td class="wl-figure">{round.isolationReps}</td>
      <td class="wl-figure" data-asked={ask === 'load' ? 'true' : undefined}>
        {`${load(loadKg.likely)} ${show}`}
        <span class="wl-row-note">{said.span(load(loadKg.low), load(loadKg.high))}</span>
      </td>
      <td class="wl-figure" data-asked={ask === 'reps' ? 'true' : undefined}>
        {reps(repsAtUsualLoad.likely)}
        <span class="wl-row-note">
          {said.span(reps(repsAtUsualLoad.low), reps(repsAtUsualLoad.high))}
        </span>
      </td>
      <td class="wl-figure">{formatPercent(capacity.with)}</td>
    </tr>
  );
}
