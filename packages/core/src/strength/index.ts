export {
  compareEquations,
  type EquationAnswer,
  type EquationComparison,
  type EquationSpread,
} from './compareEquations.ts';
export { enduranceCurves } from './enduranceCurves.ts';
export { evidenceModel } from './evidenceModel.ts';
export type {
  FindingQuestion,
  FindingReason,
  FindingReport,
  FindingStep,
  FindingTry,
} from './FindingStep.ts';
export { type ForecastDoubt, forecastDoubts } from './ForecastDoubt.ts';
export { findingProtocol } from './findingProtocol.ts';
export { findingRules } from './findingRules.ts';
export { forecastReps, type RepForecast } from './forecastReps.ts';
export { generalCurve } from './generalCurve.ts';
export { type KappaAtTempo, kappaAtTempo } from './kappaAtTempo.ts';
export { kappaBand } from './kappaBand.ts';
export type { HasLoad, LoadChance } from './LoadChance.ts';
export { loadForWindow, type WindowAnswer, type WindowQuestion } from './loadForWindow.ts';
export type { EquationLift, OneRepMaxEquation } from './OneRepMaxEquation.ts';
export { oneRepMaxEquations } from './oneRepMaxEquations.ts';
export { oneRepMaxKg } from './oneRepMaxKg.ts';
export type { PerformedSet, SetConditions, SetEnd } from './PerformedSet.ts';
export { type BelievedMax, priorFor } from './priorFor.ts';
export type { RepCurve, SourcedRepCurve } from './RepCurve.ts';
export { recentSetDays } from './recentSetDays.ts';
export { repsAtShare } from './repsAtShare.ts';
export type {
  Binding,
  NothingKnown,
  StrengthBelief,
  StrengthPosterior,
  StrengthPrior,
} from './StrengthPosterior.ts';
export { type SetContribution, setContributions } from './setContributions.ts';
export { shareForReps } from './shareForReps.ts';
export { type StrengthNews, strengthAfter } from './strengthAfter.ts';
export { strengthDrift } from './strengthDrift.ts';
export { type StrengthEvidence, strengthFrom } from './strengthFrom.ts';
export { tempoLaw } from './tempoLaw.ts';
export { vaguePrior } from './vaguePrior.ts';
export { type PaceAnswer, windowByPace } from './windowByPace.ts';
export { type OneSetAnswer, type OneSetQuestion, windowLoadFromSet } from './windowLoadFromSet.ts';
export { type RepWindow, type WindowShares, windowShares } from './windowShares.ts';
