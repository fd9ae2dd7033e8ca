import type { CalendarRequest, RotaSession } from '../Calendar.ts';
import { dateOfDay, dayNumber } from '../dayNumber.ts';
import { wallOf } from '../zonedTime.ts';
import type { CalendarModel } from './CalendarModel.ts';
import { after, firstLabel } from './firstLabel.ts';
import { hoursOn } from './hoursOn.ts';
import type { Label } from './Label.ts';
import { dueSessions, hindrance } from './place.ts';
import { type Start, weekOf } from './Start.ts';

/** What kept a day free of a session, by the session that was due. */
export interface Obstacle {
  readonly date: string;
  readonly session: string;
  /**
   * `no-hours`: nothing is open. `too-short`: less is open than the session takes. `other-gym`: it
   * cannot be done there. `day-rule`: the rule for that kind of day. `not-ready`: a muscle is not.
   * `before-the-next`: it would leave a muscle unready for a later session of the plan.
   */
  readonly reason:
    | 'no-hours'
    | 'too-short'
    | 'other-gym'
    | 'day-rule'
    | 'not-ready'
    | 'before-the-next';
  /** When all muscles of the session are ready, where they are not: wall time. */
  readonly readyAt?: string;
}

/** A week, or a whole plan without one session, that holds less than was asked. */
export interface Shortfall {
  /** First date. */
  readonly from: string;
  readonly asked: number;
  readonly placed: number;
  /** One for each day without a session, in order. */
  readonly obstacles: readonly Obstacle[];
}

interface Placed {
  readonly session: number;
  readonly place: Start;
}

/** The whole weeks of a plan that fell short, or the whole plan when nothing was placed. */
export function shortfalls(
  request: CalendarRequest,
  model: CalendarModel,
  placed: readonly Placed[],
): readonly Shortfall[] {
  const first = dayNumber(request.firstDay);
  const end = first + request.days;
  const held = [
    ...(request.done ?? []).map(({ start }) => dayNumber(start.slice(0, 10))),
    ...placed.map(({ place }) => place.day),
  ];
  const obstaclesIn = (from: number, to: number) =>
    Array.from({ length: to - from }, (_, i) => from + i)
      .filter((day) => !held.includes(day))
      .flatMap((day) => obstacle(request, model, placed, day));
  if (placed.length === 0) {
    return [{ from: request.firstDay, asked: 1, placed: 0, obstacles: obstaclesIn(first, end) }];
  }
  const { perWeek } = request;
  if (perWeek === undefined) return [];
  const short: Shortfall[] = [];
  for (let monday = 7 * weekOf(first + 6) - 3; monday + 7 <= end; monday += 7) {
    const count = held.filter((day) => weekOf(day) === weekOf(monday)).length;
    if (count >= perWeek) continue;
    short.push({
      from: dateOfDay(monday),
      asked: perWeek,
      placed: count,
      obstacles: obstaclesIn(monday, monday + 7),
    });
  }
  return short;
}

function obstacle(
  request: CalendarRequest,
  model: CalendarModel,
  placed: readonly Placed[],
  day: number,
): readonly Obstacle[] {
  let label: Label = firstLabel(request, model);
  for (const { session, place } of placed) {
    if (place.day < day) label = after(label, model, session, place);
  }
  const due = dueSessions(label, model);
  const session = (request.sessions[due[0] as number] as RotaSession).id;
  const starts = model.starts.filter((start) => start.day === day);
  if (starts.length === 0) {
    const reason = hoursOn(request, day).open.length > 0 ? 'too-short' : 'no-hours';
    return [{ date: dateOfDay(day), session, reason }];
  }
  const reasons = due.flatMap((candidate) =>
    starts.map((start) => hindrance(label, model, candidate, start) ?? 'before-the-next'),
  );
  const reason = NEAREST_FIRST.find((name) => reasons.includes(name));
  if (reason === undefined) return [];
  const readyAt = Math.min(...due.map((candidate) => label.ready[candidate] as number));
  return [
    {
      date: dateOfDay(day),
      session,
      reason,
      ...(reason === 'not-ready' ? { readyAt: wallOf(readyAt, request.zone) } : {}),
    },
  ];
}

/** Of several reasons on a day, the one that lacks least is named. */
const NEAREST_FIRST = [
  'before-the-next',
  'not-ready',
  'day-rule',
  'too-short',
  'other-gym',
] as const;
