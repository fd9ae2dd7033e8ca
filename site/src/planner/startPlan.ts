import { type LiftPlanner, rememberLifts, type SessionQuestion } from '@windlass/core/session';
import { firstExample } from './state/examples.ts';
import { type Planned, planFrom } from './state/planFrom.ts';

/** The plan that the page opens with, and a planner that remembers its lifts. */
export function startPlan(question: SessionQuestion): {
  readonly start: Planned;
  readonly planOne: LiftPlanner;
} {
  const planOne = rememberLifts();
  return { start: planFrom(firstExample, question, planOne), planOne };
}
