import type { LiveSetPlan } from '@windlass/core/extension';

type Chain = Pick<LiveSetPlan, 'stages'>;

/** Whether two ways past failure have the same stages, amounts and all. */
export function isSameChain(one: Chain, other: Chain): boolean {
  return JSON.stringify(one.stages) === JSON.stringify(other.stages);
}
