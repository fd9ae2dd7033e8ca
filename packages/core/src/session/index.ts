export type { Client, ClientSet } from './Client.ts';
export type { FixedWarmUpSet, LiftIntent, LiftOverrules, SessionIntent } from './Intent.ts';
export type {
  FindingLift,
  LeftOutLift,
  LiftBasis,
  LiftExchange,
  LiftOverruled,
  LiftPlan,
  LoadReason,
  PlannedLift,
  Refusal,
  WorkSet,
} from './LiftPlan.ts';
export type { Lift, NoLift } from './liftOf.ts';
export type { GymStation, PlanGym } from './PlanGym.ts';
export type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
export { planSession, type SessionQuestion } from './planSession.ts';
export { printSheet } from './printSheet.ts';
export { rememberLifts } from './rememberLifts.ts';
export type {
  NextSession,
  NextTime,
  NoSession,
  PlannedSession,
  SessionMinutes,
  SessionPlan,
  TimelineItem,
  TooShort,
} from './SessionPlan.ts';
export type {
  AskFirstSheet,
  SessionSheet,
  SheetCaution,
  SheetFinding,
  SheetLeftOut,
  SheetLift,
  SheetLimit,
  SheetLoad,
  SheetNext,
  SheetSet,
  SheetStep,
  TooShortSheet,
} from './Sheet.ts';
export { sessionSheet } from './sessionSheet.ts';
export type { Dropped, TimeLimit } from './TimeLimit.ts';
