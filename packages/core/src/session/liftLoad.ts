import { type CapacityState, capacityFor } from '../capacity/index.ts';
import { type ChosenLoad, chosenLoad } from './chosenLoad.ts';
import type { KnownLift } from './knownLift.ts';
import type { LeftOutLift } from './LiftPlan.ts';

/** The load of a lift whose muscles are in this state, or why it is left out. */
export function liftLoad(
  known: KnownLift,
  state: CapacityState,
): Extract<ChosenLoad, { kind: 'found' }> | LeftOutLift {
  const { question, posterior, secondsPerRep, repsInReserve } = known;
  const { lift, limits } = question;
  const capacity = capacityFor(state, lift.shares);
  const intensityCap = limits.intensityCap?.share ?? 1;
  const load = chosenLoad(
    { lift, posterior, secondsPerRep, repsInReserve, capacity, intensityCap },
    limits,
  );
  if (load.kind === 'found') return load;
  const { message } = load;
  const { intent } = lift;
  return { kind: 'left-out', intent, reason: 'no-load-for-window', message, exchanges: [] };
}
