export type { Adviser, Caution } from './Caution.ts';
export type {
  BloodPressure,
  ClientHealth,
  ClinicianLimits,
  Complaint,
  ComplaintId,
  ConditionId,
  RedFlagId,
  Side,
  SymptomId,
  TrainingContext,
} from './ClientHealth.ts';
export { cautionsFor } from './cautionsFor.ts';
export type { LimitReason, Limits, Permission, PositionLimit } from './Limits.ts';
export { limitsFor } from './limitsFor.ts';
export { type StopRule, stopRules } from './stopRules.ts';
export { stopRulesFor } from './stopRulesFor.ts';
