import { type CalendarModel, formOf } from './CalendarModel.ts';
import { after } from './firstLabel.ts';
import type { Label } from './Label.ts';
import type { Start } from './Start.ts';

/** Why a session cannot begin at a start. */
export type Hindrance =
  | 'same-day'
  | 'day-rule'
  | 'week-full'
  | 'too-short'
  | 'other-gym'
  | 'not-ready';

/** What speaks against a session at a start, after what a label has placed. */
export function hindrance(
  label: Label,
  model: CalendarModel,
  session: number,
  start: Start,
): Hindrance | undefined {
  if (start.day <= label.day) return 'same-day';
  if (!model.canUseGym(session, start.gym)) return 'other-gym';
  if (start.at + formOf(model, session, start.light).minutes > start.close) return 'too-short';
  const { rule } = start;
  const sameRun = label.run === start.run;
  if (rule?.noneOnTheNextDay && sameRun && start.day === label.day + 1) return 'day-rule';
  if (sameRun && label.inRun >= (rule?.mostInARow ?? Number.POSITIVE_INFINITY)) return 'day-rule';
  if (label.week === start.week && label.inWeek >= model.perWeek) return 'week-full';
  return start.at < (label.ready[session] as number) ? 'not-ready' : undefined;
}

/** The sessions that may come next: all that are due, or only the first of them. */
export function dueSessions(label: Label, model: CalendarModel): readonly number[] {
  const due = model.forms.map((_, session) => session).filter((bit) => label.due & (1 << bit));
  return model.anyOrder ? due : due.slice(0, 1);
}

/** A label with one more session. */
export function place(label: Label, model: CalendarModel, session: number, index: number): Label {
  const start = model.starts[index] as Start;
  const next = after(label, model, session, start);
  return {
    ...next,
    before: label,
    start: index,
    kept: label.kept + (isKept(model, start, session) ? 1 : 0),
    uneven: label.uneven + unevenness(start.day - label.day, model.perWeek),
    late: label.late + start.at,
  };
}

function isKept({ kept }: CalendarModel, { at }: Start, session: number): boolean {
  return kept.has(`${at}|${session}`);
}

/** Squared days beyond what whole days can do for even spacing: 3 or 4 days apart for two a week. */
function unevenness(days: number, perWeek: number): number {
  if (!Number.isFinite(days) || !Number.isFinite(perWeek)) return 0;
  const off = Math.max(0, Math.floor(7 / perWeek) - days, days - Math.ceil(7 / perWeek));
  return off * off;
}
