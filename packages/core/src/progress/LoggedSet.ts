import type { Problem } from '../basis/index.ts';
import type { Counts } from '../equipment/index.ts';
import type { LoadValue } from '../load/index.ts';
import type { SetEnd } from '../strength/index.ts';

/**
 * One set as it was done. Where the sides were counted apart, each side is a set of its own with
 * the same number, so that nothing has to be thrown together when it is written down.
 */
export interface LoggedSet {
  /** The calendar date the session began on, `YYYY-MM-DD`. It has no hours and no zone. */
  readonly date: string;
  /** Id of an exercise of the library, or a name of one's own. */
  readonly exercise: string;
  /** Counted from 1 within the exercise and the date. */
  readonly set: number;
  readonly side?: 'left' | 'right';
  /** What was read off or counted up, in the unit it was written in; negative for help. */
  readonly load: LoadValue;
  /** What `load` counts. `added` goes on top of the body. */
  readonly counts: Counts;
  /** Hands with a weight each, for `each-hand`; 2 when left out. */
  readonly hands?: 1 | 2;
  /** Body weight of the day, where the body is part of the load: without it such sets never compare. */
  readonly bodyWeight?: LoadValue;
  /** Whole repetitions, 0 to 200. */
  readonly reps: number;
  /** How the set ended, when it was noted. */
  readonly end?: SetEnd;
  /** As it was written: `4-0-1-0`. */
  readonly tempo?: string;
  /** Rest before the set. */
  readonly restSeconds?: number;
  /** `travel`, `light` and `test` take a set out of progression; other words are free. */
  readonly tags?: readonly string[];
  /** The machine or bar, because stack numbers of two machines never compare. */
  readonly equipment?: string;
  readonly note?: string;
}

/** A row or an entry that could not be read, and why. Nothing is dropped without one. */
export interface UnreadRow {
  /** Line of the file where the row begins, from 1; for JSON the number of the set. */
  readonly line: number;
  /** The row as it stands in the file. */
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** What a file gave. */
export interface ImportedLog {
  readonly sets: readonly LoggedSet[];
  readonly unread: readonly UnreadRow[];
}
