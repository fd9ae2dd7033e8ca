import type { Handling, ReachableLoad } from '@windlass/core/equipment';
import type { RampPurpose } from '@windlass/core/warmup';
import type { RampResult } from './compute.ts';

/** One set as it is drawn and written: of the ramp, above the work load, or the work set itself. */
export interface RampSet {
  readonly name: RampPurpose | 'above the work load' | 'work';
  readonly load: ReachableLoad;
  /** `null` for the work set, whose repetitions are not planned here. */
  readonly reps: number | null;
  readonly change: Handling;
  readonly restSeconds: number | null;
}

/** All sets in the order they are done, the work set last. */
export function setsOf({ plan }: RampResult): readonly RampSet[] {
  const above =
    plan.aboveWork.kind === 'included'
      ? [{ ...plan.aboveWork.step, name: 'above the work load' as const }]
      : [];
  return [
    ...plan.steps.map((step) => ({ ...step, name: step.purpose })),
    ...above,
    { name: 'work', load: plan.work, reps: null, change: plan.changeToWork, restSeconds: null },
  ];
}
