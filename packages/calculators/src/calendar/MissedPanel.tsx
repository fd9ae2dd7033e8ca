import { possibleStarts } from '@windlass/core/recovery';
import { formatWall } from '../ui/formatDate.ts';
import type { CalendarResult } from './compute.ts';
import type { CalendarInput } from './fields.ts';
import { said } from './words.ts';

interface MissedPanelProps {
  readonly input: CalendarInput;
  readonly result: CalendarResult;
}

const MOST_DAYS = 5;

/** Where each missed session is made up, and where else it could be. */
export function MissedPanel({ input, result }: MissedPanelProps) {
  const missed = input.past.filter(({ how }) => how === 'missed');
  const ids = new Set(missed.map(({ session }) => String(session)));
  const madeUp = [...ids].flatMap((id) => madeUpWords(id, result));
  if (madeUp.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.missed}</h2>
      {madeUp.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}

function madeUpWords(id: string, { request, plan }: CalendarResult): readonly string[] {
  const own = plan.sessions.find(({ session }) => session === id);
  if (own === undefined) return [];
  const others = plan.sessions.filter((session) => session !== own);
  const fixed = others.map(({ session, start, light }) => ({ session, start, light }));
  const days = new Set([own.date]);
  const starts = possibleStarts({ ...request, fixed }, id).filter((start) => {
    const isFirst = !days.has(start.slice(0, 10));
    days.add(start.slice(0, 10));
    return isFirst;
  });
  const also = starts.slice(0, MOST_DAYS).map(formatWall);
  return [
    `${said.missedAt(own.name, formatWall(own.start))} ${
      also.length === 0 ? said.missedOnly : said.missedAlso(said.list(also))
    }`,
  ];
}
