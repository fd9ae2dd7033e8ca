import { rememberLifts, type SessionQuestion } from '@windlass/core/session';
import { firstExample } from './state/examples.ts';
import { type Planned, planFrom } from './state/planFrom.ts';

/** The plan that the page opens with. */
export function startPlan(question: SessionQuestion): Planned {
  return planFrom(firstExample, question, rememberLifts());
}
