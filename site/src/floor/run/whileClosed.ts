import type { FloorSession } from '../session/FloorSession.ts';
import { timeWords } from '../view/clockWords.ts';
import type { FloorEvent } from './FloorEvent.ts';
import { foldEvents } from './foldEvents.ts';

/** A page that is loaded again within so many milliseconds goes on counting with the lifter. */
const LOADED_AGAIN = 60_000;

/** A count that was on when the page was closed for long: where it is made to stand still, and when. */
export interface ClosedMeanwhile {
  readonly event: FloorEvent;
  readonly time: string;
}

/**
 * What to do about a count that was on when the page was closed. A short while is a reload, and the
 * count goes on by the clock; after a longer one nobody knows what was done, so it stands where the
 * last thing happened.
 */
export function whileClosed(
  session: Pick<FloorSession, 'steps'>,
  events: readonly FloorEvent[],
  now: number,
): ClosedMeanwhile | null {
  const last = events.at(-1);
  const { running } = foldEvents(session, events);
  const { count } = running ?? {};
  if (!last || !count) return null;
  const seen = Math.max(last.at, count.startsAt);
  if (now - seen < LOADED_AGAIN) return null;
  return { event: { kind: 'held', at: last.at }, time: timeWords(last.at) };
}
