import type { CalendarModel } from './CalendarModel.ts';
import type { Label } from './Label.ts';
import { dueSessions, hindrance, place } from './place.ts';
import type { Start } from './Start.ts';

/**
 * The ways to place one more session that can matter for how many fit: each due session where it
 * fits first, in its full and in its light form, and a session that is fixed.
 *
 * A later start of the same form leaves no more: its day, its week and the hours of its muscles
 * all come later, and the run of days has as many sessions.
 */
export function soonestLabels(label: Label, model: CalendarModel): readonly Label[] {
  const { starts } = model;
  const next: Label[] = [];
  const due = dueSessions(label, model);
  const seen = new Set<string>();
  const forms = 2 * due.length;
  for (let index = label.start + 1; index < starts.length; index += 1) {
    const start = starts[index] as Start;
    const isForced = start.forced !== undefined;
    if (!isForced && seen.size === forms) continue;
    for (const session of isForced ? [start.forced as number] : due) {
      const form = `${session}|${start.light}`;
      if (!isForced && seen.has(form)) continue;
      if (hindrance(label, model, session, start)) continue;
      next.push(place(label, model, session, index));
      seen.add(form);
    }
    if (isForced) break;
  }
  return next;
}
