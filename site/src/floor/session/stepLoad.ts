import type { ReachableLoad } from '@windlass/core/equipment';
import type { FloorState } from '../run/FloorState.ts';
import type { FloorSession } from './FloorSession.ts';

/** The load of a step as it is now; `null` where it is still to be found. */
export function stepLoad(
  { steps }: Pick<FloorSession, 'steps'>,
  { loads }: Pick<FloorState, 'loads'>,
  step: number,
): ReachableLoad | null {
  return loads.get(step) ?? steps[step]?.load ?? null;
}

/** What is on a piece of equipment before a step: the load of the last set that was done on it. */
export function loadedBefore(
  session: Pick<FloorSession, 'steps' | 'lifts'>,
  { done }: Pick<FloorState, 'done'>,
  step: number,
): ReachableLoad | null {
  const equipmentOf = (place: number) => session.lifts[session.steps[place]?.lift ?? -1]?.equipment;
  const wanted = equipmentOf(step);
  const before = [...done.values()]
    .filter((set) => set.step !== step && equipmentOf(set.step) === wanted)
    .toSorted((a, b) => a.endedAt - b.endedAt);
  return before.at(-1)?.load ?? null;
}
