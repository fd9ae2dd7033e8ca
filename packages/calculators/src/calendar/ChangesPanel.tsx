import {
  type CalendarChange,
  type CalendarRequest,
  smallestChanges,
} from '@windlass/core/recovery';
import { formatDate } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { muscleList } from './names.ts';
import { said } from './words.ts';

/** For each kind of change, the smallest that would let more sessions in. */
export function ChangesPanel({ request }: { readonly request: CalendarRequest }) {
  const changes = smallestChanges(request);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.changes}</h2>
      {changes.length === 0 && <p>{said.noChange}</p>}
      <ul class="wl-sources">
        {changes.map((change) => (
          <li key={change.kind}>{changeWords(change)}</li>
        ))}
      </ul>
      <p class="wl-soft">{said.changesNote}</p>
    </section>
  );
}

function changeWords(change: CalendarChange): string {
  const { sessions } = change;
  switch (change.kind) {
    case 'less-work':
      return said.lessWork(formatNumber(change.hours, 2), muscleList(change.muscles), sessions);
    case 'shorter-sessions':
      return said.shorter(change.minutes, sessions);
    case 'another-day': {
      const { from, to } = change.open;
      return said.anotherDay(formatDate(change.date), from, to, sessions);
    }
    case 'any-order':
      return said.anyOrder(sessions);
  }
}
