import { inSentence } from '@windlass/core/basis';
import { hoursUntilReady, muscleDose } from '@windlass/core/recovery';
import { formatNumber } from '../ui/formatNumber.ts';
import type { NextDateResult } from './compute.ts';
import type { NextDateInput } from './fields.ts';
import { muscleName } from './muscleName.ts';
import { said } from './words.ts';
import { LIKE_SESSIONS, workOf } from './workOf.ts';

interface RepeatPanelProps {
  readonly input: NextDateInput;
  readonly result: NextDateResult;
}

/** Days since earlier sessions of the same, one a week. */
const WEEKLY = [[], [7], [7, 14], [7, 14, 21]] as const;

/** How the hours of the muscle that holds back fall as the same work is done again. */
export function RepeatPanel({ input, result: { shared, options } }: RepeatPanelProps) {
  const [{ muscle, effects }] = shared;
  const work = workOf(input);
  const factor = effects.reduce((product, effect) => product * effect.factor, 1);
  const rows = [
    ...WEEKLY.map((days, place) => ({ days, name: said.times[place] ?? '' })),
    { days: LIKE_SESSIONS.used, name: said.timesFamiliar },
  ].map(({ days, name }) => {
    const doses = muscleDose(
      work.map((done) => ({ ...done, likeSessionsDaysAgo: days })),
      input.status,
    );
    const hard = doses.find((dose) => dose.muscle === muscle)?.hardSets ?? 0;
    const habit = options.habit && { ...options.habit, shift: 0 };
    const hours = hoursUntilReady(Math.min(hard, 1000), input.status, habit);
    return { name, hours };
  });
  const words = (hours: number) => said.hoursWords(formatNumber(hours * factor, 0));
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.again}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{said.againColumns.time}</th>
            <th scope="col" class="wl-figure">
              {said.againColumns.likely}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, hours: { earliest, likely, cautious } }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="wl-figure">
                {words(likely)}
                <span class="wl-row-note">{said.span(words(earliest), words(cautious))}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="wl-soft">{said.againNote(inSentence(muscleName(muscle)))}</p>
    </section>
  );
}
