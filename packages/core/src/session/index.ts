export type { Client, ClientSet } from './Client.ts';
export type {
  ChainIntent,
  ChosenOverrule,
  FixedWarmUpSet,
  JoinIntent,
  LiftIntent,
  LiftOverrules,
  MusclesIntent,
  SessionIntent,
} from './Intent.ts';
export type { JoinedLift, PairEffect } from './JoinedLifts.ts';
export type { LiftFatigue } from './LiftFatigue.ts';
export type {
  ChosenFor,
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
export type { PlannedChain } from './PlannedChain.ts';
export type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
export { planSession, type SessionQuestion } from './planSession.ts';
export { printSheet } from './printSheet.ts';
export { type LiftWork, readyAfter } from './readyAfter.ts';
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
  SheetChain,
  SheetFinding,
  SheetJoin,
  SheetLeftOut,
  SheetLift,
  SheetLimit,
  SheetLoad,
  SheetNext,
  SheetSet,
  SheetStage,
  SheetStep,
  TooShortSheet,
} from './Sheet.ts';
export { sessionSheet } from './sessionSheet.ts';
export type { Dropped, TimeLimit, TurnsInstead } from './TimeLimit.ts';
