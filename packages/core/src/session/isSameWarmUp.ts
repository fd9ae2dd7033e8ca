import { loadFromValue } from '../load/index.ts';
import type { RampAnswer } from '../warmup/index.ts';
import type { FixedWarmUpSet } from './Intent.ts';

/** Whether a fixed warm-up is the one that would have been chosen. */
export function isSameWarmUp(asked: readonly FixedWarmUpSet[], chosen: RampAnswer): boolean {
  const steps = chosen.kind === 'ramp' ? chosen.steps : [];
  return (
    steps.length === asked.length &&
    asked.every(
      ({ load, reps }, at) =>
        steps[at]?.load.shown === loadFromValue(load) && steps[at]?.reps === reps,
    )
  );
}
