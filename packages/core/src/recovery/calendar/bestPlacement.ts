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
 *
 * @param mostWays so many ways of equally many sessions are kept, those judged best so far; it bounds
 * the time and leaves the number of sessions as it is.
 */
export function bestPlacement(
  model: CalendarModel,
  first: Label,
  mostWays = Number.POSITIVE_INFINITY,
): Label | undefined {
  const longest = mostSessions(model, first);
  if (longest === undefined) return undefined;
  const most = longest.count;
  const bound = upperBounds(model);
  let layer: readonly Label[] = [first];
  for (let count = 1; count <= most; count += 1) {
    const buckets = new Map<string, Label[]>();
    for (const label of layer) {
      for (const next of nextLabels(label, model)) {
        if (count + bound(next) >= most) keepIfBetter(buckets, next);
      }
    }
    const kept = [...buckets.values()].flat();
    layer = kept.length > mostWays ? kept.sort(byJudgement).slice(0, mostWays) : kept;
  }
  return layer
    .filter((label) => finishes(model, label))
    .reduce<Label>((best, label) => (isAsGood(best, label) ? best : label), longest.last);
}

function byJudgement(a: Label, b: Label): number {
  return isAsGood(a, b) ? -1 : 1;
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
  return isAsGood(a, b) && a.ready.every((ready, session) => ready <= (b.ready[session] as number));
}
