import type { CapacityState } from '../capacity/index.ts';
import type { ChosenLoad } from './chosenLoad.ts';
import type { KnownLift } from './knownLift.ts';
import type { LeftOutLift } from './LiftPlan.ts';
import { liftLoad } from './liftLoad.ts';
import { type LiftWarmUp, warmUpFor } from './warmUpFor.ts';

/** A lift with its load and its warm-up; its sets are still to come. */
export interface LoadedLift {
  readonly kind: 'loaded';
  readonly known: KnownLift;
  readonly load: Extract<ChosenLoad, { kind: 'found' }>;
  readonly warmUp: LiftWarmUp;
}

/** The load of a lift with the warm-up to it, or why it is left out. */
export function loadedLift(known: KnownLift, state: CapacityState): LoadedLift | LeftOutLift {
  const load = liftLoad(known, state);
  if (load.kind === 'left-out') return load;
  const { work } = load;
  const { lift, client, warm, skipSteps } = known.question;
  const { experience } = client;
  const warmUp = warmUpFor({ lift, work, experience, start: state, warm, skipSteps });
  return { kind: 'loaded', known, load, warmUp };
}
