import type { Random } from './inputs/Random.ts';

/** Something that takes what comes from outside. */
export interface Target {
  readonly name: string;
  /** How often it is tried, against the others. */
  readonly weight: number;
  /** Most processor time for one input; what takes longer, three times over, is a fault. */
  readonly mostMs: number;
  readonly make: (random: Random) => unknown;
  /** Gives the outputs that are checked. Whatever it throws is a fault. */
  readonly run: (input: never) => unknown;
}
