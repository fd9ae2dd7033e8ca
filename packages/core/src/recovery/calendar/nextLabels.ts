import type { CalendarModel } from './CalendarModel.ts';
import type { Label } from './Label.ts';
import { dueSessions, hindrance, place } from './place.ts';
import type { Start } from './Start.ts';

/**
 * Every way to place one more session that can matter; a session that is fixed is never passed over.
 *
 * On each day a session needs only its earliest possible start: a later one of the same day limits
 * what follows at least as much and is judged worse, unless an earlier plan had it there.
 */
export function nextLabels(label: Label, model: CalendarModel): readonly Label[] {
  const { starts, kept } = model;
  const next: Label[] = [];
  const due = dueSessions(label, model);
  let [day, seen] = [Number.NaN, 0];
  for (let index = label.start + 1; index < starts.length; index += 1) {
    const start = starts[index] as Start;
    if (start.day !== day) [day, seen] = [start.day, 0];
    for (const session of start.forced === undefined ? due : [start.forced]) {
      const isLater = (seen & (1 << session)) !== 0;
      const isKept = kept.has(`${start.at}|${session}`);
      if (isLater && start.forced === undefined && !isKept) continue;
      if (hindrance(label, model, session, start)) continue;
      next.push(place(label, model, session, index));
      seen |= 1 << session;
    }
    if (start.forced !== undefined) break;
  }
  return next;
}
