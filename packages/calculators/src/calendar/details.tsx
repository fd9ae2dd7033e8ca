import type { PlacedSession } from '@windlass/core/recovery';
import { formatDate } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { ChangesPanel } from './ChangesPanel.tsx';
import type { CalendarResult } from './compute.ts';
import { FilePanel } from './FilePanel.tsx';
import type { CalendarInput } from './fields.ts';
import { MissedPanel } from './MissedPanel.tsx';
import { muscleList } from './names.ts';
import { ObstacleList } from './ObstacleList.tsx';
import { said } from './words.ts';

interface CalendarDetailsProps {
  readonly input: CalendarInput;
  readonly result: CalendarResult;
}

/** What had to give, what would help, the file, and every session with the hours its muscles had. */
export function CalendarDetails({ input, result }: CalendarDetailsProps) {
  const { request, plan } = result;
  return (
    <>
      <FilePanel input={input} plan={plan} />
      {plan.shortfalls.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.gave}</h2>
          <ObstacleList request={request} shortfalls={plan.shortfalls} />
        </section>
      )}
      {plan.shortfalls.length > 0 && <ChangesPanel request={request} />}
      <MissedPanel input={input} result={result} />
      <section class="wl-panel">
        <h2 class="wl-heading">{said.each}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.when}</th>
              <th scope="col">{said.columns.session}</th>
            </tr>
          </thead>
          <tbody>
            {plan.sessions.map((session) => (
              <SessionRow key={session.number} session={session} />
            ))}
          </tbody>
        </table>
        <p class="wl-soft">{said.eachNote(said.by[input.by])}</p>
      </section>
    </>
  );
}

function SessionRow({ session }: { readonly session: PlacedSession }) {
  const { date, start, end, name, light, gym, gaps } = session;
  const [tightest] = gaps;
  const named = light ? said.cellLight(name) : name;
  return (
    <tr>
      <th scope="row" class="wl-when">
        {formatDate(date)}
        <span class="wl-row-note">{said.until(start.slice(11), end.slice(11))}</span>
      </th>
      <td>
        {gym === said.otherGym ? said.inGym(named, gym) : named}
        <span class="wl-row-note">
          {tightest
            ? said.gap(
                muscleList([tightest.muscle]),
                formatNumber(tightest.hours, 1),
                formatNumber(tightest.hoursNeeded, 1),
              )
            : said.noGap}
        </span>
      </td>
    </tr>
  );
}
