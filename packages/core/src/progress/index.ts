export {
  type CarriedOver,
  type CarryOverQuestion,
  carryOver,
} from './carryOver.ts';
export type { DateOrder } from './cells/readDate.ts';
export { chanceOfRate } from './chanceOfRate.ts';
export {
  type Comeback,
  type ComebackQuestion,
  comeback,
  type NoComebackLoad,
} from './comeback.ts';
export { comparableSessions } from './comparableSessions.ts';
export { type DoseFinding, doseEvidence } from './doseEvidence.ts';
export { type ExpectedAndDone, expectedAgainstDone } from './expectedAgainstDone.ts';
export { type IdealLineQuestion, type IdealWeek, idealLine } from './idealLine.ts';
export { importLog } from './importLog.ts';
export { type LeftOutSet, type LiftSession, type SessionSet, setAsideTags } from './LiftSession.ts';
export type { LoadAdvice, WindowChance } from './LoadAdvice.ts';
export type { ImportedLog, LoggedSet, UnreadRow } from './LoggedSet.ts';
export type { LogColumns, LogField, LogMapping } from './LogMapping.ts';
export { type LiftSessions, liftSessions } from './liftSessions.ts';
export { type LightWeek, type LightWeekQuestion, lightWeek } from './lightWeek.ts';
export { logCsvColumns } from './logCsvColumns.ts';
export { type MovedLoad, type MovedLoadContext, movedLoad } from './movedLoad.ts';
export type { NextLoadQuestion } from './NextLoadQuestion.ts';
export { nextLoad } from './nextLoad.ts';
export { type ProgressRules, progressRuleSources, progressRules } from './ProgressRules.ts';
export { type PerformedSetsOptions, performedSets } from './performedSets.ts';
export {
  type ColumnPreview,
  type ImportPreview,
  type ImportQuestion,
  previewImport,
} from './previewImport.ts';
export { readLogCsv } from './readLogCsv.ts';
export { readLogJson } from './readLogJson.ts';
export { type RepsBeforeStep, repsBeforeStep } from './repsBeforeStep.ts';
export { type HarderWay, type OtherLoad, repsWithOtherLoad } from './repsWithOtherLoad.ts';
export type { StallCause, StallCauseId } from './review/StallCause.ts';
export {
  type LiftReview,
  type LogReview,
  type ReviewedExercise,
  type ReviewQuestion,
  reviewLog,
} from './reviewLog.ts';
export { type KnownSet, setsFromLog } from './setsFromLog.ts';
export { type SideGap, sideGap } from './sideGap.ts';
export { type StallCausesQuestion, stallCauses } from './stallCauses.ts';
export {
  type SetTarget,
  type StallAnswer,
  type StallQuestion,
  stallCheck,
} from './stallCheck.ts';
export {
  type NoTrend,
  type StrengthTrend,
  strengthTrend,
  type TrendOptions,
} from './strengthTrend.ts';
export type { BrokenRow, Separator } from './table/Table.ts';
export { type TopSets, topSets } from './topSets.ts';
export {
  type TrainedExercise,
  type TrainedSession,
  type TrainedSessions,
  trainedSessions,
} from './trainedSessions.ts';
export {
  type CountedExercise,
  type MuscleWeek,
  type TrainingWeek,
  type WeeklyDose,
  weeklyDose,
} from './weeklyDose.ts';
export { writeLogCsv } from './writeLogCsv.ts';
export { type LogFile, writeLogJson } from './writeLogJson.ts';
