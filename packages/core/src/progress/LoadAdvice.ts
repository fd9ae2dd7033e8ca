import type { Bridge, NoChoice, ReachableLoad } from '../equipment/index.ts';
import type { StopRule } from '../safety/index.ts';
import type { Comeback, NoComebackLoad } from './comeback.ts';
import type { RepsBeforeStep } from './repsBeforeStep.ts';
import type { StallCause } from './review/StallCause.ts';
import type { StallAnswer } from './stallCheck.ts';

/** How a set to failure would meet the window, by the forecast; sum 1. */
export interface WindowChance {
  readonly before: number;
  readonly inside: number;
  readonly beyond: number;
}

interface Advised {
  readonly load: ReachableLoad;
  /** Repetitions to aim at in every top set. */
  readonly aim: number;
  /** Only when a posterior was given. */
  readonly chance?: WindowChance;
  /** The next heavier load here and how far it is, in percent of the load of last time. */
  readonly nextStep?: { readonly to: ReachableLoad; readonly percent: number };
  /** A sentence to show. */
  readonly says: string;
}

/** What to load next time, and why. */
export type LoadAdvice =
  | (Advised & { readonly kind: 'raise'; readonly percent: number })
  | (Advised & {
      readonly kind: 'repeat';
      readonly because:
        | 'inside-the-window'
        | 'top-reached-once'
        | 'missed'
        | 'missed-but-rising'
        | 'forecast-against'
        | 'nothing-heavier';
    })
  /** The next load is too far: repetitions first, or one of the bridges. */
  | (Advised & {
      readonly kind: 'reps-first';
      readonly before: RepsBeforeStep;
      readonly bridges: readonly Bridge[];
    })
  /** The forecast says that the load is plainly too heavy for the window. */
  | (Advised & { readonly kind: 'lower' })
  | (Advised & {
      readonly kind: 'reset';
      readonly stall: StallAnswer;
      readonly causes: readonly StallCause[];
    })
  | { readonly kind: 'come-back'; readonly comeback: Comeback | NoComebackLoad }
  /** Pain: nothing is raised, and the signs say whom to ask. */
  | { readonly kind: 'stop'; readonly signs: readonly StopRule[]; readonly says: string }
  /** No session to go by: see `findingProtocol` of `@windlass/core/strength`. */
  | { readonly kind: 'no-history' }
  | { readonly kind: 'no-loads'; readonly why: NoChoice };
