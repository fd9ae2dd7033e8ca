export type {
  CalendarRequest,
  DateRange,
  DayHours,
  DayRule,
  MuscleGap,
  OpenHours,
  OtherHours,
  PlacedSession,
  Rota,
  RotaSession,
  TimedSession,
} from './Calendar.ts';
export type { CalendarEntry } from './CalendarEntry.ts';
export type { Obstacle, Shortfall } from './calendar/shortfalls.ts';
export { type CalendarRevision, calendarEntries } from './calendarEntries.ts';
export { type CalendarFileOptions, calendarFile } from './calendarFile.ts';
export { dateOfDay, dayNumber } from './dayNumber.ts';
export { type ElapsedTime, elapsedTime } from './elapsedTime.ts';
export {
  hoursUntilReady,
  type ReadyHours,
  type RecoveryHabit,
  unknownHabit,
} from './hoursUntilReady.ts';
export { learnRecovery, type PerformanceReport } from './learnRecovery.ts';
export { lightWeeks } from './lightWeeks.ts';
export { type MuscleDose, muscleDose } from './muscleDose.ts';
export { type MuscleHoursOptions, muscleHours } from './muscleHours.ts';
export { type NotCounted, notCounted } from './notCounted.ts';
export { type NoCalendar, type PlannedCalendar, planCalendar } from './planCalendar.ts';
export { possibleStarts } from './possibleStarts.ts';
export type { RecoveryEffect, RecoveryReports, Soreness } from './RecoveryReports.ts';
export {
  type MuscleReadiness,
  type PastSession,
  type ReadinessOptions,
  readiness,
} from './readiness.ts';
export { recoveryModel } from './recoveryModel.ts';
export { reportEffects } from './reportEffects.ts';
export { type SharedMuscle, sharedMuscles } from './sharedMuscles.ts';
export { type CalendarChange, smallestChanges } from './smallestChanges.ts';
export {
  type SpacingConflict,
  type SpacingQuestion,
  spacingConflicts,
} from './spacingConflicts.ts';
export type { TrainedSets, TrainingStatus } from './TrainedSets.ts';
export { unaccustomedShare } from './unaccustomedShare.ts';
export { wallTimeAfter } from './wallTimeAfter.ts';
