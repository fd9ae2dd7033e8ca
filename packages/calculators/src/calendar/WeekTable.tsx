import {
  type CalendarRequest,
  dateOfDay,
  dayNumber,
  type PlacedSession,
} from '@windlass/core/recovery';
import { formatDate } from '../ui/formatDate.ts';
import { words } from '../words.ts';
import { said } from './words.ts';

interface WeekTableProps {
  readonly request: CalendarRequest;
  readonly sessions: readonly PlacedSession[];
}

/** The plan as weeks from Monday, each day with its date and its session. */
export function WeekTable({ request, sessions }: WeekTableProps) {
  const first = dayNumber(request.firstDay);
  const last = first + request.days - 1;
  const monday = 7 * Math.floor((first + 3) / 7) - 3;
  const weeks = Array.from({ length: Math.floor((last - monday) / 7) + 1 }, (_, week) =>
    Array.from({ length: 7 }, (_, day) => monday + 7 * week + day),
  );
  return (
    <table class="wl-weeks">
      <caption class="wl-unseen">{said.table}</caption>
      <thead>
        <tr>
          {words.dates.weekdays.map((weekday) => (
            <th key={weekday} scope="col">
              {weekday}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {weeks.map((days) => (
          <tr key={days[0]} aria-label={said.weekOf(formatDate(dateOfDay(days[0] ?? 0)))}>
            {days.map((day) => {
              const isInside = first <= day && day <= last;
              const date = dateOfDay(day);
              return (
                <DayCell
                  key={day}
                  date={date}
                  isInside={isInside}
                  session={sessions.find((session) => session.date === date)}
                />
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface DayCellProps {
  readonly date: string;
  readonly isInside: boolean;
  readonly session: PlacedSession | undefined;
}

function DayCell({ date, isInside, session }: DayCellProps) {
  if (!isInside) return <td />;
  const day = Number(date.slice(8));
  const month = words.dates.months[Number(date.slice(5, 7)) - 1];
  return (
    <td data-session={session ? 'true' : undefined}>
      <span class="wl-weeks-day">{day === 1 ? `${day} ${month}` : day}</span>
      {session && (
        <>
          <strong>{session.name}</strong>
          <span>{session.start.slice(11)}</span>
          {session.light && <span>{said.light}</span>}
          {session.gym === said.otherGym && <span>{said.otherGym}</span>}
        </>
      )}
    </td>
  );
}
