import { type DoseFinding, doseEvidence, type TrainingWeek } from '@windlass/core/progress';
import { dateOfDay, dayNumber } from '@windlass/core/recovery';
import { muscleNames } from '../precomputed/pairLifts.ts';
import { formatDate } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { LogReviewResult } from './compute.ts';
import { said } from './words.ts';

interface DosePanelProps {
  readonly result: LogReviewResult;
  readonly on: string;
}

const WEEKS = 4;

/** Sets of each muscle in the last whole weeks, and what studies say for more and for few. */
export function DosePanel({ result: { review }, on }: DosePanelProps) {
  const monday = 7 * Math.floor((dayNumber(on) + 3) / 7) - 3;
  const from = dateOfDay(monday - 7 * WEEKS);
  const until = dateOfDay(monday);
  const weeks = review.dose.weeks.filter((week) => from <= week.from && week.from < until);
  const rows = meanSets(weeks);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.dose}</h2>
      <p class="wl-soft">{said.doseFrom(formatDate(from), formatDate(dateOfDay(monday - 1)))}</p>
      {rows.length === 0 && <p>{said.noDose}</p>}
      {rows.length > 0 && (
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.doseColumns.muscle}</th>
              <th scope="col" class="wl-figure">
                {said.doseColumns.sets}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ muscle, sets }) => (
              <tr key={muscle}>
                <th scope="row">{muscleNames[muscle] ?? muscle}</th>
                <td class="wl-figure">{formatNumber(sets, 1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {review.dose.unknown.length > 0 && <p>{said.unknown(review.dose.unknown)}</p>}
      <Findings side="more-sets" />
      <Findings side="few-sets-suffice" />
      <p class="wl-soft">{said.bothSides}</p>
    </section>
  );
}

/** A week without a set counts as one with none. */
function meanSets(weeks: readonly TrainingWeek[]) {
  const sums = new Map<TrainingWeek['muscles'][number]['muscle'], number>();
  for (const { muscles } of weeks) {
    for (const { muscle, sets } of muscles) sums.set(muscle, (sums.get(muscle) ?? 0) + sets);
  }
  return [...sums.entries()]
    .map(([muscle, sets]) => ({ muscle, sets: sets / WEEKS }))
    .sort((a, b) => b.sets - a.sets);
}

function Findings({ side }: { readonly side: DoseFinding['speaksFor'] }) {
  return (
    <>
      <h3>{said.speaksFor[side]}</h3>
      <ul class="wl-sources">
        {doseEvidence
          .filter(({ speaksFor }) => speaksFor === side)
          .map(({ says, source }) => (
            <li key={source.id}>
              {says}
              <cite class="wl-cite">{source.citation}.</cite>
            </li>
          ))}
      </ul>
    </>
  );
}
