import type { ReachableLoad } from '@windlass/core/equipment';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { FloorState } from '../run/FloorState.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { doneLifts } from './doneLifts.ts';

const EACH_WAY = 4;

/** The loads next to the one of the set that comes next, lightest first, and its own. */
export function otherLoads(
  planned: Planned,
  session: FloorSession,
  state: FloorState,
): readonly ReachableLoad[] {
  const place = session.steps[state.step]?.lift ?? -1;
  const loads = doneLifts(planned)[place]?.lift.loads.loads ?? [];
  const now = stepLoad(session, state, state.step);
  const at = now ? loads.findIndex(({ shown }) => shown >= now.shown) : 0;
  const middle = at < 0 ? loads.length - 1 : at;
  return loads.slice(Math.max(0, middle - EACH_WAY), middle + EACH_WAY + 1);
}

/** The steps that another load is for: this set and the like ones of its lift that come after. */
export function stepsLike({ steps }: FloorSession, { done, step }: FloorState): readonly number[] {
  const here = steps[step];
  return steps.flatMap((one, at) => {
    const isLike = one.lift === here?.lift && one.kind === here.kind && at >= step && !done.has(at);
    const isAlone = here?.kind !== 'work' && one.number !== here?.number;
    return isLike && !isAlone ? [at] : [];
  });
}
