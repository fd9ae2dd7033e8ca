import {
  phasesOfRep,
  type RepPhase,
  type RepsInWindow,
  repsInWindow,
  secondsPerRep,
  secondsPerSet,
  secondsUnderLoad,
  type Tempo,
  type TempoPause,
} from '@windlass/core/tempo';
import type { Computed } from '../contract/Definition.ts';
import type { CountWindow } from '../fields/Field.ts';

export interface TempoInput {
  readonly tempo: Tempo;
  readonly starts: 'lower' | 'lift';
  readonly reps: number;
  readonly lastPause: 'counted' | 'left-out';
  readonly relief: 'none' | TempoPause | 'both';
  readonly fastLift: number;
  readonly goal: CountWindow;
}

export interface TempoResult {
  readonly phases: readonly RepPhase[];
  readonly repSeconds: number;
  readonly setSeconds: number;
  /** The set read the other way: with the last pause left out, or counted. */
  readonly otherReading: number;
  readonly underLoadSeconds: number;
  readonly inGoal: RepsInWindow;
}

/** The pauses in which the muscle is relieved. */
export function restingPauses(relief: TempoInput['relief']): readonly TempoPause[] {
  if (relief === 'both') return ['pause-after-lower', 'pause-after-lift'];
  return relief === 'none' ? [] : [relief];
}

/** Seconds of a repetition and a set, and the repetitions that keep a set inside a span of time. */
export function computeTempo(input: TempoInput): Computed<TempoResult> {
  const { tempo, starts, reps, lastPause, relief, fastLift, goal } = input;
  const timing = { startsWith: starts, fastLiftSeconds: fastLift };
  const other = lastPause === 'counted' ? 'left-out' : 'counted';
  const result: TempoResult = {
    phases: phasesOfRep(tempo, timing),
    repSeconds: secondsPerRep(tempo, timing),
    setSeconds: secondsPerSet(tempo, reps, { ...timing, lastPause }),
    otherReading: secondsPerSet(tempo, reps, { ...timing, lastPause: other }),
    underLoadSeconds: secondsUnderLoad(tempo, reps, {
      ...timing,
      lastPause,
      restingPauses: restingPauses(relief),
    }),
    inGoal: repsInWindow(
      tempo,
      { minSeconds: goal.low, maxSeconds: goal.high },
      { ...timing, lastPause },
    ),
  };
  return { kind: 'result', result };
}
