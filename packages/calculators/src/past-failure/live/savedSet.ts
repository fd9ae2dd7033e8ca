import { type LiveSet, liveStanding, resumeLiveSet } from '@windlass/core/extension';
import { loadFromValue } from '@windlass/core/load';
import { SAVED_KEY } from './savedKey.ts';

/** A set that is being followed, with what belongs to it. */
export interface RunningSet {
  readonly set: LiveSet;
  /** When its second 0 was, on the clock of `secondsNow`. */
  readonly origin: number;
  /** As the exercise is called. */
  readonly name: string;
  /** As the tempo was written. */
  readonly tempo: string;
}

/** What a browser keeps while a tab is open: `sessionStorage`, or anything like it. */
export type TabMemory = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The set that this tab was following before it was loaded again; `null` without one. */
export function savedSet(memory: TabMemory): RunningSet | null {
  try {
    const saved = JSON.parse(memory.getItem(SAVED_KEY) ?? 'null') as RunningSet | null;
    if (saved === null || !Number.isFinite(saved.origin)) return null;
    const resumed = resumeLiveSet(saved.set);
    loadFromValue(saved.set.plan.load);
    return resumed.ok ? saved : null;
  } catch {
    // Storage that is blocked, or a text that is no set: then none is running.
    return null;
  }
}

/** Whether a saved set has begun and has not ended. */
export function isUnderWay({ set }: RunningSet): boolean {
  return set.log.length > 0 && liveStanding(set).end === null;
}

/** Keeps a set for as long as the tab is open; `null` forgets it. */
export function saveSet(running: RunningSet | null, memory: TabMemory): void {
  try {
    if (running === null) memory.removeItem(SAVED_KEY);
    else memory.setItem(SAVED_KEY, JSON.stringify(running));
  } catch {
    // Private windows refuse; the set then lasts as long as the page.
  }
}
