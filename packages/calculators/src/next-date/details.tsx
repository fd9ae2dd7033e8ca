import { inSentence } from '@windlass/core/basis';
import { type MuscleReadiness, muscleDose, notCounted } from '@windlass/core/recovery';
import type { NextDateResult } from './compute.ts';
import { EffectsPanel } from './EffectsPanel.tsx';
import { exercisesFor } from './exercisesFor.ts';
import type { NextDateInput } from './fields.ts';
import { muscleName } from './muscleName.ts';
import { plannedWords } from './plannedWords.ts';
import { RepeatPanel } from './RepeatPanel.tsx';
import { whenWords } from './whenWords.ts';
import { said } from './words.ts';
import { nextWork } from './workOf.ts';

interface NextDateDetailsProps {
  readonly input: NextDateInput;
  readonly result: NextDateResult;
}

/** What holds the next session back, what the reports do, and how the hours change as work grows familiar. */
export function NextDateDetails({ input, result }: NextDateDetailsProps) {
  const { muscles, shared } = result;
  const done = muscles.map(({ muscle }) => muscle);
  const free = muscleDose(nextWork(input))
    .map(({ muscle }) => muscle)
    .filter((muscle) => !done.includes(muscle));
  const planned = plannedWords(input, result);
  return (
    <>
      {planned.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.planned}</h2>
          {planned.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      )}
      <section class="wl-panel">
        <h2 class="wl-heading">{said.holds}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.holdsColumns.muscle}</th>
              <th scope="col">{said.holdsColumns.likely}</th>
            </tr>
          </thead>
          <tbody>
            {shared.map((one) => (
              <HoldRow key={one.muscle} one={one} input={input} start={result.start} />
            ))}
          </tbody>
        </table>
        <p class="wl-soft">{said.holdsNote}</p>
        {free.length > 0 && <p>{said.free(namesOf(free))}</p>}
      </section>
      <EffectsPanel muscles={muscles} />
      <RepeatPanel input={input} result={result} />
      <section class="wl-panel">
        <h2 class="wl-heading">{said.notCounted}</h2>
        <ul class="wl-sources">
          {notCounted.map(({ factor, why }) => (
            <li key={factor}>{why}</li>
          ))}
        </ul>
      </section>
    </>
  );
}

function namesOf(muscles: readonly MuscleReadiness['muscle'][]): string {
  return said.list(muscles.map((muscle) => inSentence(muscleName(muscle))));
}

interface HoldRowProps {
  readonly one: MuscleReadiness;
  readonly input: NextDateInput;
  readonly start: string;
}

function HoldRow({ one: { muscle, readyIn }, input, start }: HoldRowProps) {
  const when = (hours: number) => whenWords(start, hours, input.zone);
  const before = exercisesFor(muscle, input.next);
  return (
    <tr>
      <th scope="row">
        {muscleName(muscle)}
        <span class="wl-row-note">{said.worked(exercisesFor(muscle, input.work))}</span>
        {before !== '' && <span class="wl-row-note">{said.shared(before)}</span>}
      </th>
      <td>
        {when(readyIn.likely)}
        <span class="wl-row-note">{said.span(when(readyIn.earliest), when(readyIn.cautious))}</span>
      </td>
    </tr>
  );
}
