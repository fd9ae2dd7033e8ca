import type { LoadList, ReachableLoad } from '../../equipment/index.ts';
import type { LiftSession } from '../LiftSession.ts';
import type { NextLoadQuestion } from '../NextLoadQuestion.ts';
import type { ProgressRules } from '../ProgressRules.ts';

/** What the parts of the advice share. */
export interface AdviceContext {
  readonly question: NextLoadQuestion;
  readonly rules: ProgressRules;
  /** Without those set aside. */
  readonly sessions: readonly LiftSession[];
  readonly last: LiftSession;
  /** What the equipment can make. */
  readonly list: LoadList;
  /** The load of last time as it can be made here. */
  readonly here: ReachableLoad;
}
