export type { AboveWork, AboveWorkCondition } from './AboveWork.ts';
export { type GivenStep, givenRamp } from './givenRamp.ts';
export { planRamp } from './planRamp.ts';
export type {
  NoRamp,
  RampAnswer,
  RampImpossible,
  RampPlan,
  RampPurpose,
  RampQuestion,
  RampStep,
} from './Ramp.ts';
export { rampRules } from './rampRules.ts';
export { warmupSources } from './warmupSources.ts';
