import {
  type AskFirstSheet,
  type LiftPlanner,
  planSession,
  type SessionPlan,
  type SessionQuestion,
  type SessionSheet,
  sessionSheet,
  type TooShortSheet,
} from '@windlass/core/session';
import type { Json } from './tree.ts';

/** A draft that could be planned from, with its plan. */
export interface Planned {
  readonly draft: Json;
  readonly question: SessionQuestion;
  readonly plan: SessionPlan;
  readonly sheet: SessionSheet | AskFirstSheet | TooShortSheet;
}

/** The plan for what was read from a draft. */
export function planFrom(draft: Json, question: SessionQuestion, planOne: LiftPlanner): Planned {
  const plan = planSession(question, planOne);
  return { draft, question, plan, sheet: sessionSheet(plan) };
}
