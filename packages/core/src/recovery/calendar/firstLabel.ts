import type { CalendarRequest } from '../Calendar.ts';
import { dayNumber } from '../dayNumber.ts';
import { minutesOf, minutesOfInstant } from '../zonedTime.ts';
import { type CalendarModel, formOf } from './CalendarModel.ts';
import { isLight } from './fixedStarts.ts';
import type { Label } from './Label.ts';
import { onDay } from './onDay.ts';

/** Where the plan begins: what the sessions done and other work leave behind. */
export function firstLabel(request: CalendarRequest, model: CalendarModel): Label {
  const busy = Object.entries(request.notReadyBefore ?? {});
  let label: Label = {
    start: -1,
    session: -1,
    day: Number.NEGATIVE_INFINITY,
    at: Number.NEGATIVE_INFINITY,
    due: fullRound(model),
    ready: request.sessions.map(({ muscles }) =>
      Math.max(
        Number.NEGATIVE_INFINITY,
        ...busy
          .filter(([muscle]) => muscle in muscles)
          .map(([, instant]) => Math.ceil(minutesOfInstant(instant))),
      ),
    ),
    week: Number.NEGATIVE_INFINITY,
    inWeek: 0,
    run: Number.NEGATIVE_INFINITY,
    inRun: 0,
    kept: 0,
    uneven: 0,
    late: 0,
  };
  const done = (request.done ?? [])
    .map((session) => ({ ...session, at: minutesOf(session.start, request.zone) }))
    .sort((a, b) => a.at - b.at);
  for (const session of done) {
    const index = request.sessions.findIndex(({ id }) => id === session.session);
    const place = onDay(request, dayNumber(session.start.slice(0, 10)));
    const light = isLight(request, session);
    label = after(label, model, index, { ...place, at: session.at, light });
  }
  return label;
}

/** Every session of the rotation due. */
export function fullRound(model: CalendarModel): number {
  return 2 ** model.forms.length - 1;
}

/** The state after a session, whether or not it should have been there. */
export function after(
  label: Label,
  model: CalendarModel,
  session: number,
  {
    at,
    day,
    week,
    run,
    light,
  }: { at: number; day: number; week: number; run: number; light: boolean },
): Label {
  const { holdsBack } = formOf(model, session, light);
  const due = label.due & ~(1 << session);
  return {
    ...label,
    session,
    day,
    at,
    due: due === 0 ? fullRound(model) : due,
    ready: label.ready.map((ready, other) => Math.max(ready, at + (holdsBack[other] as number))),
    week,
    inWeek: label.week === week ? label.inWeek + 1 : 1,
    run,
    inRun: label.run === run ? label.inRun + 1 : 1,
  };
}
