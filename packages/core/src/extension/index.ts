export { advanceLiveSet, type LiveSetStep } from './advanceLiveSet.ts';
export type { ChainForecast, ChainForecastInput, StageForecast } from './ChainForecast.ts';
export type { ChainRefusal, NearestChain } from './ChainRefusal.ts';
export { type ChainDose, chainDose } from './chainDose.ts';
export { type ChainNeed, chainNeeds } from './chainNeeds.ts';
export { chainParameters } from './chainParameters.ts';
export { chainRefusals } from './chainRefusals.ts';
export { type ChainThresholds, chainThresholds, type ThresholdInput } from './chainThresholds.ts';
export { chainTimes } from './chainTimes.ts';
export { type ChainTrace, chainTrace, type ThresholdBand } from './chainTrace.ts';
export { dueStop } from './dueStop.ts';
export type { DueStop } from './dueStopAt.ts';
export { forcedRepHelp } from './forcedRepHelp.ts';
export { forecastChain } from './forecastChain.ts';
export type { LiveSet, LiveSetEvent, LiveSetPlan } from './LiveSet.ts';
export { type LiveSetRecord, liveSetRecord } from './liveSetRecord.ts';
export { liveStanding } from './liveStanding.ts';
export { type LoweringControl, loweringControl } from './loweringControl.ts';
export { nearestChain } from './nearestChain.ts';
export { type ChainPlan, planChain } from './planChain.ts';
export { positionWords } from './positionWords.ts';
export { redoLiveSet } from './redoLiveSet.ts';
export { resumeLiveSet } from './resumeLiveSet.ts';
export type {
  AssistedStage,
  ChainExercise,
  ChainLimits,
  ChainSetting,
  HoldStage,
  LiftStage,
  LighterStage,
  LowerStage,
  PartRangeStage,
  PauseStage,
  Stage,
  StageKind,
} from './Stage.ts';
export type { LiveEnd, LivePhase, LiveStanding, StageDone } from './Standing.ts';
export { stageAmounts } from './stageAmounts.ts';
export { stageDoses } from './stageDoses.ts';
export { type StageRule, stageRules } from './stageRules.ts';
export { startLiveSet } from './startLiveSet.ts';
export { undoLiveSet } from './undoLiveSet.ts';
