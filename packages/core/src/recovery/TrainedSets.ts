import type { Exercise, Variant } from '../anatomy/index.ts';

/** Sets of one exercise in one session, planned or done, as recovery counts them. */
export interface TrainedSets {
  /** Only its muscle shares are read. */
  readonly exercise: Pick<Exercise, 'direct' | 'indirect'>;
  readonly variant?: Variant;
  /** Work sets, 0 to 100; warm-up sets do not count. */
  readonly sets: number;
  /** Repetitions left when a set ended; 0 is lifting failure, and what is left out. */
  readonly repsInReserve?: number;
  /** How many stages went on past lifting failure in each set: a hold, lowerings, help. 0 when left out. */
  readonly stagesPastFailure?: number;
  /** Whether the work was lowering of loads near or above what can be lifted. */
  readonly loweringHeavy?: boolean;
  /**
   * Days since each earlier session of like work in the last six months, in any order; an empty
   * list when this is the first. Left out, it is taken from the training status: work is new to
   * someone new to lifting, and familiar to others.
   */
  readonly likeSessionsDaysAgo?: readonly number[];
}

/** `new`: the first weeks of lifting. `trained`: a year or more, regularly. */
export type TrainingStatus = 'new' | 'recreational' | 'trained';
