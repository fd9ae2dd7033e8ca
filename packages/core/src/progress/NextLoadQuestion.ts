import type { Equipment, ReachableLoads } from '../equipment/index.ts';
import type { RepWindow, SourcedRepCurve, StrengthPosterior } from '../strength/index.ts';
import type { LiftSession } from './LiftSession.ts';
import type { ProgressRules } from './ProgressRules.ts';

/** What the next load is worked out from. */
export interface NextLoadQuestion {
  /** Sessions of the exercise, oldest first, from `liftSessions`. */
  readonly sessions: readonly LiftSession[];
  /** Repetitions that the sets are to have. */
  readonly window: RepWindow;
  /** Repetitions left on purpose at the end of the sets; 0 when they go to failure. */
  readonly repsInReserve?: number;
  readonly equipment: Equipment;
  /** What it can make, from `reachableLoads`. */
  readonly loads: ReachableLoads;
  /** The date of the next session, `YYYY-MM-DD`. */
  readonly on: string;
  /** What is believed of the lifter on that day; the advice goes by the log alone without it. */
  readonly posterior?: StrengthPosterior;
  readonly secondsPerRep?: number;
  /** The rep curve of the lift; the general one when left out. */
  readonly curve?: SourcedRepCurve;
  /** Sharp, one-sided or growing pain, or swelling, since the last session. */
  readonly pain?: boolean;
  /** Hours that the slowest muscle asks for, for the causes of a stall. */
  readonly hoursNeeded?: number;
  readonly rules?: Partial<ProgressRules>;
}
