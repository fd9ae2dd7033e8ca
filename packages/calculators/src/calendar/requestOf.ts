import {
  type CalendarRequest,
  type DayHours,
  type DayRule,
  lightWeeks,
  type OpenHours,
  type TimedSession,
} from '@windlass/core/recovery';
import type { CalendarInput, ShiftId } from './fields.ts';
import { OWN_GYM, sessionsOf } from './sessionsOf.ts';
import { said } from './words.ts';

/** A Monday, so that the days of the week count from it. */
const A_MONDAY = '2026-03-02';

/** What the form says as a request to place sessions. */
export function requestOf(input: CalendarInput): CalendarRequest {
  const { zone, firstDay, weeks, order, perWeek, lightEvery, pattern } = input;
  const light = lightEvery === null ? [] : lightWeeks(firstDay, weeks, lightEvery);
  const rules = pattern === 'rota' ? rulesOf(input) : [];
  const otherHours = awayOf(input);
  const rota = pattern === 'week' ? weekOf(input) : rotaOf(input);
  const days = [...rota.days, ...otherHours.map(({ hours }) => hours)];
  const done = input.past.filter(({ how }) => how === 'done').map(timed);
  const fixed = input.fixed.map(timed);
  return {
    zone,
    firstDay,
    days: 7 * weeks,
    rota,
    sessions: sessionsOf(input),
    order,
    mostWays: MOST_WAYS,
    ...(hasLongHours(days) && { startEveryMinutes: 60 }),
    ...(perWeek !== null && { perWeek }),
    ...(otherHours.length > 0 && { otherHours }),
    ...(rules.length > 0 && { rules }),
    ...(light.length > 0 && { lightDates: light }),
    ...(done.length > 0 && { done }),
    ...(fixed.length > 0 && { fixed }),
  };
}

/** Bounds the time of plans in which many ways are alike; ordinary ones have fewer. */
const MOST_WAYS = 60;
/** In hours longer than these, starts lie an hour apart instead of half of one. */
const LONG_HOURS = 6;

function hasLongHours(days: readonly DayHours[]): boolean {
  const minutes = (time: string) => 60 * Number(time.slice(0, 2)) + Number(time.slice(3));
  const length = ({ from, to }: OpenHours) => (minutes(to) - minutes(from) + 1440) % 1440;
  return days.some(({ open }) => open.some((hours) => length(hours) > 60 * LONG_HOURS));
}

function timed({ session, on, at }: CalendarInput['fixed'][number]): TimedSession {
  return { session: String(session), start: `${on}T${at}` };
}

/** Hours that begin and end at the same time are none. */
function openings(rows: readonly OpenHours[]): readonly OpenHours[] {
  return rows.filter(({ from, to }) => from !== to).map(({ from, to }) => ({ from, to }));
}

function weekOf({ week }: CalendarInput): CalendarRequest['rota'] {
  const days = Array.from({ length: 7 }, (_, day): DayHours => {
    return { open: openings(week.filter((row) => Number(row.day) === day)), gym: OWN_GYM };
  });
  return { firstDay: A_MONDAY, days };
}

function rotaOf({ rota, rotaFrom, shifts }: CalendarInput): CalendarRequest['rota'] {
  const hours = (shift: ShiftId): DayHours => ({
    open: openings(shifts.filter((row) => row.shift === shift)),
    kind: shift,
    gym: OWN_GYM,
  });
  const days = rota.flatMap(({ shift, days: count }) =>
    Array.from({ length: count }, () => hours(shift)),
  );
  return { firstDay: rotaFrom, days };
}

function rulesOf({ dayShifts, nightShifts }: CalendarInput): readonly DayRule[] {
  return [
    ...(dayShifts === 'light' ? [{ kind: 'day', light: true }] : []),
    ...(dayShifts === 'one' ? [{ kind: 'day', light: true, mostInARow: 1 }] : []),
    ...(nightShifts === 'apart' ? [{ kind: 'night', noneOnTheNextDay: true }] : []),
  ];
}

function awayOf({ away }: CalendarInput): NonNullable<CalendarRequest['otherHours']> {
  return away.map(({ from, to, gym, open, close }) => ({
    from,
    to,
    hours:
      gym === 'none'
        ? { open: [] }
        : { open: openings([{ from: open, to: close }]), gym: said.otherGym },
  }));
}
