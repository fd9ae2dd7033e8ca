import type { CalendarModel } from './CalendarModel.ts';
import type { Label } from './Label.ts';
import { soonestLabels } from './soonestLabels.ts';

/** A number of sessions, and the last label of a way to place them. */
interface MostSessions {
  readonly count: number;
  readonly last: Label;
}

/**
 * The largest number of sessions that can be placed after a label, exactly, and one way to do it;
 * nothing when a session that has to be placed cannot be.
 *
 * Session by session, keeping only those ways that no other way of equally many sessions that ends
 * no later matches in everything that limits what can follow: muscles ready no later, no more
 * sessions in the week and in the run of days.
 */
export function mostSessions(model: CalendarModel, first: Label): MostSessions | undefined {
  let count = 0;
  let best = finishes(model, first) ? { count, last: first } : undefined;
  let layer: readonly Label[] = [first];
  while (layer.length > 0) {
    const next: Label[] = [];
    const grown = layer.flatMap((label) => soonestLabels(label, model));
    for (const label of grown.sort((a, b) => a.at - b.at)) {
      if (!next.some((other) => leavesAsMuch(other, label, model))) next.push(label);
    }
    layer = next;
    count += 1;
    const last = layer.find((label) => finishes(model, label));
    if (last) best = { count, last };
  }
  return best;
}

/** Whether no session that has to be placed still lies ahead. */
export function finishes(model: CalendarModel, label: Label): boolean {
  return model.forcedAfter(label.start) === 0;
}

/** Whether whatever can follow `b` can follow `a`, which ends no later. */
function leavesAsMuch(a: Label, b: Label, model: CalendarModel): boolean {
  return (
    a.due === b.due &&
    (a.week < b.week || a.inWeek <= b.inWeek) &&
    (a.run !== b.run || a.inRun <= b.inRun) &&
    a.ready.every((ready, session) => ready <= (b.ready[session] as number)) &&
    model.forcedAfter(a.start) === model.forcedAfter(b.start)
  );
}
