export { generalCurve } from './generalCurve.ts';
export { type KappaAtTempo, kappaAtTempo } from './kappaAtTempo.ts';
export type { RepCurve, SourcedRepCurve } from './RepCurve.ts';
export { repsAtShare } from './repsAtShare.ts';
export { shareForReps } from './shareForReps.ts';
export { tempoLaw } from './tempoLaw.ts';
export { type RepWindow, type WindowShares, windowShares } from './windowShares.ts';
