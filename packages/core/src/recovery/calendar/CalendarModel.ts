import type { CalendarRequest, RotaSession } from '../Calendar.ts';
import { minutesOf } from '../zonedTime.ts';
import type { Start } from './Start.ts';
import { startsOf } from './startsOf.ts';

/** A session's two forms as the search sees them; index 0 in full, 1 light. */
export interface Form {
  readonly minutes: number;
  /** For each session of the rotation, the minutes after the start of this one until it may begin: not before its end. */
  readonly holdsBack: readonly number[];
}

/** A calendar request in numbers. */
export interface CalendarModel {
  readonly starts: readonly Start[];
  /** How many sessions have to be placed after each start; at -1, from the beginning. */
  readonly forcedAfter: (start: number) => number;
  readonly forms: readonly (readonly [Form, Form])[];
  readonly canUseGym: (session: number, gym: string | undefined) => boolean;
  readonly anyOrder: boolean;
  readonly perWeek: number;
  /** Places of an earlier plan, as `start|session`. */
  readonly kept: ReadonlySet<string>;
}

/** Turns a request into numbers: moments in minutes, sessions by their place in the rotation. */
export function modelOf(request: CalendarRequest): CalendarModel {
  const { sessions } = request;
  const form = (minutes: number, muscles: Readonly<Record<string, number>>): Form => ({
    minutes,
    holdsBack: sessions.map((other) =>
      Math.max(
        minutes,
        ...Object.keys(other.muscles).map((muscle) => wholeMinutes(muscles[muscle] ?? 0)),
      ),
    ),
  });
  const indexOf = (id: string) => sessions.findIndex((session) => session.id === id);
  const starts = startsOf(request);
  const forced = [...starts.keys()].filter(
    (index) => (starts[index] as Start).forced !== undefined,
  );
  return {
    starts,
    forcedAfter: (start) => forced.filter((index) => index > start).length,
    forms: sessions.map(({ minutes, muscles, light }) => [
      form(minutes, muscles),
      light ? form(light.minutes, light.muscles) : form(minutes, muscles),
    ]),
    canUseGym: (session, gym) =>
      (sessions[session] as RotaSession).gyms?.some((name) => name === gym) ?? true,
    anyOrder: request.order === 'any-in-round',
    perWeek: request.perWeek ?? Number.POSITIVE_INFINITY,
    kept: new Set(
      (request.keep ?? []).map(
        ({ start, session }) => `${minutesOf(start, request.zone)}|${indexOf(session)}`,
      ),
    ),
  };
}

/** A session in full or in its light form. */
export function formOf({ forms }: CalendarModel, session: number, light: boolean): Form {
  return (forms[session] as readonly [Form, Form])[light ? 1 : 0];
}

/** Whole minutes that are not less; 48 h from a sum of thirds stays 48 h. */
export function wholeMinutes(hours: number): number {
  return Math.ceil(60 * hours - 1e-6);
}
