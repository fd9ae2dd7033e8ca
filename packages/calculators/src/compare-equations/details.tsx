import type { EquationAnswer, OneRepMaxEquation } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { EquationsResult } from './compute.ts';
import type { EquationsInput } from './fields.ts';
import { said } from './words.ts';

interface EquationsDetailsProps {
  readonly input: EquationsInput;
  readonly result: EquationsResult;
}

/** Each equation with its answer, its range, what it was made from and how far it was off. */
export function EquationsDetails({ input, result }: EquationsDetailsProps) {
  const rows: readonly EquationAnswer[] = [...result.answered, ...result.broken];
  if (rows.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.table}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{said.columns.equation}</th>
            <th scope="col" class="wl-figure">
              {said.columns.max}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ equation, oneRepMaxKg, place }) => (
            <tr key={equation.id}>
              <th scope="row">
                {equation.name}
                <span class="wl-row-note">
                  {rangeWords(equation)} {said.from(equation.madeFrom)}{' '}
                  {said.error(equation.knownError)}
                </span>
              </th>
              <td class="wl-figure">
                {oneRepMaxKg === undefined
                  ? said.noNumber
                  : `${formatNumber(inUnit(oneRepMaxKg, input.show), 1)}\u00a0${input.show}`}
                <span class="wl-row-note">{said.places[place]}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function rangeWords({ validReps, validShares }: OneRepMaxEquation): string {
  if (validReps) return said.reps(...validReps);
  return validShares
    ? said.shares(formatPercent(validShares[0]), formatPercent(validShares[1]))
    : said.noRange;
}
