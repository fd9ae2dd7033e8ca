import type { Load } from '../load/index.ts';
import { openingLoad } from './openingLoad.ts';
import { rampRules } from './rampRules.ts';

/**
 * Wished loads of a ramp of `steps` steps, lightest first. The opening load is the lightest one
 * here, or 30 % of the work load where that is heavier by far; from there the jumps shrink evenly,
 * so that the last one, to the work load, is the smallest.
 *
 * @param steps 1 or more.
 * @param lightest lightest load of this equipment, below the work load.
 */
export function rampTargets(
  steps: number,
  lightest: Load,
  work: Load,
  experience: 'new' | 'trained',
): readonly Load[] {
  const opening = openingLoad(lightest, work);
  if (steps === 1) return [Math.max(opening, Math.round(rampRules.singleStepShare * work)) as Load];
  const [two, three, more] = rampRules.lastShares;
  const usual = steps === 2 ? two : steps === 3 ? three : more;
  const lastShare = experience === 'new' ? Math.min(usual, rampRules.lastShareWhenNew) : usual;
  const way = work - opening;
  const lastJump = Math.min((1 - lastShare) * work, way / steps);
  const firstJump = (2 * way) / steps - lastJump;
  const targets = [opening];
  for (let index = 0; index < steps - 1; index += 1) {
    const jump = firstJump + ((lastJump - firstJump) * index) / (steps - 1);
    targets.push(Math.round((targets.at(-1) ?? opening) + jump) as Load);
  }
  return targets;
}
