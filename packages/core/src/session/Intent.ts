import type { Unit } from '../load/index.ts';
import type { RepWindow } from '../strength/index.ts';
import type { Tempo } from '../tempo/index.ts';

/** One lift that is wanted. */
export interface LiftIntent {
  /** Id of the exercise. */
  readonly exercise: string;
  /** Id of one of its set-ups, when it is not done in the usual one. */
  readonly variant?: string;
  /** Id of the equipment in the gym. */
  readonly equipment: string;
  /** Lifting failure is wanted inside this window. */
  readonly window: RepWindow;
  readonly tempo: Tempo;
  readonly sets: number;
  readonly restSeconds: number;
}

/** What a coach wants of a session. */
export interface SessionIntent {
  /** The day of the session, `YYYY-MM-DD`. */
  readonly date: string;
  /** Unit in which loads are said. */
  readonly unit: Unit;
  /** In the order in which they are done. */
  readonly lifts: readonly LiftIntent[];
  /** Walking over and setting up between two exercises. */
  readonly changeSeconds: number;
}
