import type { CapacityState } from './CapacityState.ts';
import type { CapacityStep } from './CapacityStep.ts';
import { depositReps } from './depositReps.ts';
import { depositSustained } from './depositSustained.ts';
import { restCapacity } from './restCapacity.ts';

/** How long a step takes. */
export function stepSeconds(step: CapacityStep): number {
  return step.kind === 'reps' ? step.reps * step.secondsPerRep : step.seconds;
}

/** The state after the first `elapsed` seconds of a step; a rep begun counts by its part. */
export function stepCapacity(
  state: CapacityState,
  step: CapacityStep,
  elapsed: number,
): CapacityState {
  switch (step.kind) {
    case 'reps':
      return depositReps(state, step.shares, elapsed / step.secondsPerRep, step.costPerRep);
    case 'sustain':
      return depositSustained(state, step.shares, { ...step, seconds: elapsed });
    case 'rest':
      return restCapacity(state, elapsed);
  }
}
