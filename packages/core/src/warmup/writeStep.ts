import type { WarmupSet } from './capacityKept.ts';
import type { StepDraft } from './draftStep.ts';
import { purposeOf } from './purposeOf.ts';
import type { RampStep } from './Ramp.ts';

/** A step of a ramp, from its draft and its settled set. */
export function writeStep({ load, shareOfWork, change }: StepDraft, set: WarmupSet): RampStep {
  return {
    purpose: purposeOf(shareOfWork),
    load,
    shareOfWork,
    reps: set.reps,
    seconds: set.reps * set.secondsPerRep,
    change,
    restSeconds: set.restSeconds,
  };
}
