import type { Band } from '@windlass/core/basis';
import type { Counts, ReachableLoad } from '@windlass/core/equipment';
import type { LiveSetPlan } from '@windlass/core/extension';
import type { LoadValue, Unit } from '@windlass/core/load';
import type { Adviser, Caution, StopRule } from '@windlass/core/safety';
import type { RepWindow } from '@windlass/core/strength';
import type { RepStart, Tempo } from '@windlass/core/tempo';

/** A side that is done by itself, of an exercise that does one after the other. */
export type FloorSide = 'left' | 'right';

/** How a set goes on past lifting failure. */
export interface FloorChain {
  readonly plan: LiveSetPlan;
  /** What has to be there before the set, each a sentence. */
  readonly needs: readonly string[];
}

/** One set of a session, in the order in which they are done. */
export interface FloorStep {
  /** Place of its lift in `lifts`. */
  readonly lift: number;
  /** `try`: looking for the load of a lift without history. */
  readonly kind: 'warm-up' | 'try' | 'work';
  /** From 1, within its kind and lift; both sides of a set have the same. */
  readonly number: number;
  /** How many of its kind the lift has. */
  readonly of: number;
  readonly side?: FloorSide;
  /** Both sides of a warm-up set, one after the other, are one step. */
  readonly isEachSide?: true;
  /** `null` where it is found on the way. */
  readonly load: ReachableLoad | null;
  /** To do; of a work set the likely count. */
  readonly reps: number;
  /** What a work set will probably give. */
  readonly expected?: Band;
  /** How it is planned to go on past lifting failure. */
  readonly chain?: FloorChain;
  /** After it, until the next set. */
  readonly restSeconds: number;
}

/** A lift of a session, as far as it has to be known to do it. */
export interface FloorLift {
  /** Id of the exercise. */
  readonly exercise: string;
  readonly name: string;
  /** Id of the equipment. */
  readonly equipment: string;
  readonly equipmentName: string;
  /** The bar itself, where plates go on one. */
  readonly bar?: LoadValue;
  readonly counts: Counts;
  readonly tempo: Tempo;
  readonly startsWith: RepStart;
  readonly window: RepWindow;
  /** Repetitions that are to be left at the end; 0 is lifting failure. */
  readonly repsInReserve: number;
  /** What ends a set, and why this load. */
  readonly notes: readonly string[];
}

/** A lift that is not done, and why. */
export interface FloorLeftOut {
  readonly name: string;
  readonly reason: string;
}

/** A session to be done set by set: plain data, kept with what happens. */
export interface FloorSession {
  readonly client: string;
  readonly gym: string;
  /** The day it was planned for, `YYYY-MM-DD`. */
  readonly date: string;
  readonly unit: Unit;
  readonly bodyWeight?: LoadValue;
  readonly lifts: readonly FloorLift[];
  readonly leftOut: readonly FloorLeftOut[];
  readonly steps: readonly FloorStep[];
  readonly cautions: readonly Caution[];
  readonly stopRules: readonly StopRule[];
  /** In place of steps: why there is no time for any. */
  readonly tooShort?: string;
  /** In place of steps: somebody has to be asked before any set. */
  readonly askFirst?: { readonly reasons: readonly string[]; readonly ask: readonly Adviser[] };
}
