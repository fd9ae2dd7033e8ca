import { requireNumber } from '../basis/index.ts';
import { type Load, subtractLoad } from '../load/index.ts';
import { bridgesFor } from './bridgesFor.ts';
import type { Equipment } from './Equipment.ts';
import type { ReachableLoads } from './Loading.ts';
import { nextUp } from './nextUp.ts';
import type { StepSize, StepUp } from './StepSize.ts';
import { BEYOND_REPETITIONS_PERCENT, LARGE_STEP_PERCENT, stepSizeSources } from './stepSizes.ts';

/**
 * How large the step to the next heavier load is, and how to bridge it when it is too large.
 *
 * Up to 10 % it is an ordinary step. Above that, ways to go on with the load of today come with
 * it, each changing one thing only. Where the starting resistance of a machine is unknown, the
 * percentage is that of the plates and so larger than the real one.
 *
 * @param loads the answer of `reachableLoads` for this equipment.
 * @param from the load of today, more than 0, whether or not it can be made here.
 * @throws RangeError for a load that is not more than 0.
 * @example
 * ```ts
 * import { reachableLoads, stepUp } from '@windlass/core/equipment';
 * import { kg } from '@windlass/core/load';
 * const rack = {
 *   kind: 'fixed' as const, form: 'dumbbell' as const, id: 'rack', name: 'Rack',
 *   weights: [4, 6].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 2 })),
 * };
 * const step = stepUp(rack, reachableLoads(rack), kg(4));
 * step.kind === 'step' ? [step.percent, step.size, step.bridges[0]?.id] : []; // [50, 'beyond-repetitions', 'more-repetitions']
 * ```
 */
export function stepUp(equipment: Equipment, loads: ReachableLoads, from: Load): StepUp {
  requireNumber('stepUp', 'from in steps', from, 1);
  const next = nextUp(loads, from);
  if (next.kind === 'none') return next;
  const difference = subtractLoad(next.chosen.load, from);
  const percent = (100 * difference) / from;
  const size = sizeOf(percent);
  return {
    kind: 'step',
    to: next.chosen,
    difference,
    percent,
    size,
    bridges: size === 'ordinary' ? [] : bridgesFor(equipment.kind, from),
    sources: stepSizeSources,
  };
}

function sizeOf(percent: number): StepSize {
  if (percent > BEYOND_REPETITIONS_PERCENT) return 'beyond-repetitions';
  return percent > LARGE_STEP_PERCENT ? 'large' : 'ordinary';
}
