export type { ChainForecast, ChainForecastInput, StageForecast } from './ChainForecast.ts';
export type { ChainRefusal, NearestChain } from './ChainRefusal.ts';
export { type ChainDose, chainDose } from './chainDose.ts';
export { chainLimits } from './chainLimits.ts';
export { chainParameters } from './chainParameters.ts';
export { chainRefusals } from './chainRefusals.ts';
export { type ChainThresholds, chainThresholds, type ThresholdInput } from './chainThresholds.ts';
export { chainTimes } from './chainTimes.ts';
export { type ChainTrace, chainTrace, type ThresholdBand } from './chainTrace.ts';
export { forcedRepHelp } from './forcedRepHelp.ts';
export { forecastChain } from './forecastChain.ts';
export { nearestChain } from './nearestChain.ts';
export { type ChainPlan, planChain } from './planChain.ts';
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
export { stageDoses } from './stageDoses.ts';
export { type StageRule, stageRules } from './stageRules.ts';
