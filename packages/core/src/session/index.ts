export type { Client, ClientSet } from './Client.ts';
export type { LiftIntent, SessionIntent } from './Intent.ts';
export type { Lift, NoLift } from './liftOf.ts';
export type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
export { planSession, type SessionQuestion } from './planSession.ts';
export { printSheet } from './printSheet.ts';
export { rememberLifts } from './rememberLifts.ts';
export type {
  FindingLift,
  LeftOutLift,
  LiftBasis,
  LiftPlan,
  LoadReason,
  NoSession,
  PlannedLift,
  PlannedSession,
  SessionMinutes,
  SessionPlan,
  TimelineItem,
  WorkSet,
} from './SessionPlan.ts';
export type {
  AskFirstSheet,
  SessionSheet,
  SheetCaution,
  SheetFinding,
  SheetLeftOut,
  SheetLift,
  SheetLoad,
  SheetSet,
  SheetStep,
} from './Sheet.ts';
export { sessionSheet } from './sessionSheet.ts';
