import type { Plate, ReachableLoad } from '@windlass/core/equipment';

/** The plates of one side of a loaded bar, innermost first; none of any other loading. */
export function sideOf({ loading }: ReachableLoad): readonly Plate[] {
  return loading.kind === 'plates' ? (loading.stacks[0]?.plates ?? []) : [];
}
