import {
  type Equipment,
  type EquipmentUse,
  type NoLoads,
  type ReachableLoad,
  reachableLoads,
  waysToLoad,
} from '../equipment/index.ts';
import type { Load } from '../load/index.ts';

/** More loadings than this are not weighed against one another. */
const MOST_RAMP_WAYS = 5000;

/**
 * The loadings a ramp is chosen from, up to a heaviest load: those that need up to three groups of
 * plates more than the fewest for their load; fewer more, where that would be over 5,000 loadings;
 * and where even the ties are too many, one for each load.
 */
export function rampWays(
  equipment: Equipment,
  use: EquipmentUse,
  heaviest: Load,
): readonly ReachableLoad[] | NoLoads {
  for (let extraGroups = 3; extraGroups >= 0; extraGroups -= 1) {
    const answer = waysToLoad(equipment, use, { heaviest }, extraGroups);
    if (answer.kind === 'ways' && answer.ways.length <= MOST_RAMP_WAYS) return answer.ways;
  }
  const list = reachableLoads(equipment, use, { heaviest });
  return list.kind === 'none' ? list : list.loads;
}
