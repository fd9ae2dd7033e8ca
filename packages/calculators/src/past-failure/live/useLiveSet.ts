import {
  advanceLiveSet,
  type DueStop,
  dueStop,
  type LiveSetEvent,
  type LiveStanding,
  liveStanding,
  redoLiveSet,
  undoLiveSet,
} from '@windlass/core/extension';
import { useEffect, useState } from 'preact/hooks';
import { secondsNow } from './clock.ts';
import { type RunningSet, saveSet } from './savedSet.ts';

type WithoutTime<Event> = Event extends LiveSetEvent ? Omit<Event, 'atSeconds'> : never;

/** What was said, without its time: the clock gives it. */
export type Said = WithoutTime<LiveSetEvent>;

/** A set that is being followed, and what can be done with it. */
export interface LiveSetControl {
  readonly running: RunningSet;
  readonly standing: LiveStanding;
  /** Seconds on the clock of the set. */
  readonly now: number;
  /** A stop rule that the clock has brought. */
  readonly due: DueStop | null;
  readonly say: (said: Said) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly begin: (running: RunningSet) => void;
}

const TICK_MILLISECONDS = 100;

/** Follows a set by the clock and keeps it through a reload. All rules are the library's. */
export function useLiveSet(first: () => RunningSet): LiveSetControl {
  const [running, setRunning] = useState(first);
  const { set, origin } = running;
  const [clock, setClock] = useState(secondsNow);
  const standing = liveStanding(set);
  const now = Math.max(standing.lastAt, clock - origin);

  useEffect(() => {
    const timer = setInterval(() => setClock(secondsNow()), TICK_MILLISECONDS);
    return () => clearInterval(timer);
  }, []);

  const keep = (next: RunningSet) => {
    setRunning(next);
    saveSet(next, sessionStorage);
  };
  const say = (said: Said) => {
    const atSeconds = Math.max(standing.lastAt, secondsNow() - origin);
    keep({ ...running, set: advanceLiveSet(set, { ...said, atSeconds }).set });
  };
  return {
    running,
    standing,
    now,
    due: dueStop(set, now),
    say,
    undo: () => keep({ ...running, set: undoLiveSet(set).set }),
    redo: () => keep({ ...running, set: redoLiveSet(set).set }),
    begin: keep,
  };
}
