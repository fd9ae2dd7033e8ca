import type { Load } from '../load/index.ts';
import type { SetEnd } from '../strength/index.ts';
import type { LoggedSet } from './LoggedSet.ts';

/** One set of a session, both sides together: it counts as what the weaker side did. */
export interface SessionSet {
  /** What had to be moved. */
  readonly load: Load;
  /** What was read off or counted up: the weight on the belt, the number on the stack. */
  readonly shown: Load;
  readonly reps: number;
  /** Where the sides were counted apart. */
  readonly sides?: { readonly left: number; readonly right: number };
  readonly end?: SetEnd;
  readonly tempo?: string;
  readonly restSeconds?: number;
}

/** All sets of one exercise on one date, in order. */
export interface LiftSession {
  readonly date: string;
  /** The date as a day number. */
  readonly day: number;
  /** Never empty. */
  readonly sets: readonly [SessionSet, ...SessionSet[]];
  /** Tags of any of its sets. */
  readonly tags: readonly string[];
}

/** A set that could not take part, and why. */
export interface LeftOutSet {
  readonly set: LoggedSet;
  readonly reason: 'body-weight-not-given' | 'nothing-moved' | 'not-of-this-machine';
}

/** Tags that take a session out of progression. */
export const setAsideTags: readonly string[] = ['travel', 'light', 'test'];
