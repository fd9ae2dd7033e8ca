import type { FloorEvent } from './FloorEvent.ts';

/** What counts of what has happened, and what was taken back. */
export interface EffectiveEvents {
  readonly events: readonly FloorEvent[];
  /** What `redone` would bring back, the latest first: each as the list that it would give. */
  readonly undone: readonly (readonly FloorEvent[])[];
}

const NOTHING: EffectiveEvents = { events: [], undone: [] };

/**
 * A log without what was taken back in it.
 *
 * Repetitions of the count are not taken back by themselves: they go with the beginning they were
 * counted from. An end that is taken back leaves the count standing still, because time has passed.
 * What ended a set past failure is taken back with all that followed from it.
 */
export function effectiveEvents(log: readonly FloorEvent[]): EffectiveEvents {
  return log.reduce(add, NOTHING);
}

function add(before: EffectiveEvents, event: FloorEvent): EffectiveEvents {
  const { events, undone } = before;
  if (event.kind === 'redone') {
    const [again, ...rest] = undone;
    return again ? { events: again, undone: rest } : before;
  }
  if (event.kind === 'undone') {
    const last = lastPress(events);
    return last < 0 ? before : { events: without(events, last), undone: [events, ...undone] };
  }
  return { events: [...events, event], undone: isByHand(event) ? [] : undone };
}

function lastPress(events: readonly FloorEvent[]): number {
  const last = events.findLastIndex(isByHand);
  const [live, over, sign] = events.slice(Math.max(0, last - 2), last + 1);
  const isOfEnd = sign?.kind === 'sign' && sign.step !== undefined;
  return isOfEnd && live?.kind === 'live' && over?.kind === 'live-over' ? last - 2 : last;
}

function isByHand(event: FloorEvent): boolean {
  return event.kind !== 'held' && event.kind !== 'live-over' && !isOfCount(event);
}

function isOfCount(event: FloorEvent): boolean {
  return event.kind === 'rep' && event.by === 'count';
}

function without(events: readonly FloorEvent[], place: number): readonly FloorEvent[] {
  const before = events.slice(0, place);
  const taken = events[place];
  if (taken?.kind === 'failed' || taken?.kind === 'stopped') {
    return [...before, { kind: 'held', at: taken.at }];
  }
  if (taken?.kind === 'begun' || taken?.kind === 'counted-on' || taken?.kind === 'live') {
    return before;
  }
  return [...before, ...events.slice(place + 1)];
}
