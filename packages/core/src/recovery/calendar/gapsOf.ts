import type { CalendarRequest, MuscleGap, RotaSession } from '../Calendar.ts';
import { minutesOf } from '../zonedTime.ts';
import { wholeMinutes } from './CalendarModel.ts';

/** What gaps are read from. */
type Rotation = Pick<CalendarRequest, 'zone' | 'sessions'>;

/** A session on the time line, in the form it is done in. */
export interface Moment {
  /** Index in the rotation. */
  readonly session: number;
  readonly start: string;
  readonly light: boolean;
}

/** How long each muscle of a session had since the earlier session that binds it most, shortest margin first. */
export function gapsOf(
  request: Rotation,
  earlier: readonly Moment[],
  moment: Moment,
): readonly MuscleGap[] {
  const at = minutesOf(moment.start, request.zone);
  const gaps = Object.keys(sessionOf(request, moment).muscles).flatMap((muscle) => {
    const bindings = earlier.flatMap((other) => {
      const { muscles, light } = sessionOf(request, other);
      const hoursNeeded = (other.light && light ? light.muscles : muscles)[muscle];
      if (hoursNeeded === undefined) return [];
      const hours = (at - minutesOf(other.start, request.zone)) / 60;
      return [{ muscle, hours, hoursNeeded, lastTrained: other.start }];
    });
    return bindings.sort((a, b) => margin(a) - margin(b) || a.hours - b.hours).slice(0, 1);
  });
  return gaps.sort((a, b) => margin(a) - margin(b) || (a.muscle < b.muscle ? -1 : 1));
}

/** Minutes to spare, below 0 when the muscle was not ready. */
export function margin({ hours, hoursNeeded }: MuscleGap): number {
  return 60 * hours - wholeMinutes(hoursNeeded);
}

function sessionOf({ sessions }: Rotation, { session }: Moment): RotaSession {
  return sessions[session] as RotaSession;
}
