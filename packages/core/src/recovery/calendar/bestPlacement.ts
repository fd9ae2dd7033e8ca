import type { CalendarModel } from './CalendarModel.ts';
import { isAsGood, type Label } from './Label.ts';
import { finishes, mostSessions } from './mostSessions.ts';
import { nextLabels } from './nextLabels.ts';
import { upperBounds } from './upperBounds.ts';

/**
 * The best way to place as many sessions as possible, exactly; nothing when a session that has to
 * be placed cannot be.
 *
 * Of all ways with the largest number: most sessions left where an earlier plan had them, then the
 * most even spacing, then the earliest. A way is dropped when another of equally many sessions
 * ends at the same start, owes the same sessions, has all muscles ready no later and is judged as
 * good; or when even the upper bound of what can follow falls short of the largest number.
 */
export function bestPlacement(model: CalendarModel, first: Label): Label | undefined {
  const most = mostSessions(model, first);
  if (most < 0) return undefined;
  const bound = upperBounds(model);
  let layer: readonly Label[] = [first];
  for (let count = 1; count <= most; count += 1) {
    const buckets = new Map<string, Label[]>();
    for (const label of layer) {
      for (const next of nextLabels(label, model)) {
        if (count + bound(next) >= most) keepIfBetter(buckets, next);
      }
    }
    layer = [...buckets.values()].flat();
  }
  return layer
    .filter((label) => finishes(model, label))
    .reduce<Label | undefined>(
      (best, label) => (best && isAsGood(best, label) ? best : label),
      undefined,
    );
}

function keepIfBetter(buckets: Map<string, Label[]>, label: Label): void {
  const key = `${label.start}|${label.due}|${label.inWeek}|${label.inRun}`;
  const others = buckets.get(key);
  if (others === undefined) {
    buckets.set(key, [label]);
    return;
  }
  if (others.some((other) => covers(other, label))) return;
  buckets.set(key, [...others.filter((other) => !covers(label, other)), label]);
}

function covers(a: Label, b: Label): boolean {
  return isAsGood(a, b) && a.ready.every((ready, session) => ready <= (b.ready[session] ?? 0));
}
