export { checkTempo } from './checkTempo.ts';
export { comparePace, type PaceComparison } from './comparePace.ts';
export { type CompareTempoOptions, compareTempo } from './compareTempo.ts';
export { type Cue, type CueTimeline, type CueTimelineOptions, cueTimeline } from './cueTimeline.ts';
export { type FormatTempoOptions, formatTempo } from './formatTempo.ts';
export { type ParseTempoOptions, parseTempo, type TempoReading } from './parseTempo.ts';
export { phasesOfRep, type RepPhase } from './phasesOfRep.ts';
export {
  type RepsInWindow,
  repsInWindow,
  type TimedReps,
  type TimeWindow,
} from './repsInWindow.ts';
export type { SetTiming } from './SetTiming.ts';
export { secondsPerRep } from './secondsPerRep.ts';
export { secondsPerSet } from './secondsPerSet.ts';
export { type LoadTiming, secondsUnderLoad } from './secondsUnderLoad.ts';
export type { RepStart, RepTiming, Tempo, TempoOrder, TempoPause, TempoPhase } from './Tempo.ts';
export type {
  AskedAndDone,
  PhaseComparison,
  RepComparison,
  RepDone,
  TempoComparison,
} from './TempoComparison.ts';
export {
  FAST_LIFT_SECONDS,
  LONGEST_PHASE_SECONDS,
  LONGEST_REP_SECONDS,
  SHORTEST_MOVEMENT_SECONDS,
} from './tempoLimits.ts';
