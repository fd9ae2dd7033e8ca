import type { FloorSession } from '../session/FloorSession.ts';
import { effectiveEvents } from './effectiveEvents.ts';
import type { FloorEvent } from './FloorEvent.ts';
import type { FloorState } from './FloorState.ts';
import { happen } from './happen.ts';

/** Where a session stands before anything has happened. */
export function startState({ steps }: Pick<FloorSession, 'steps'>): FloorState {
  return {
    phase: steps.length === 0 ? 'over' : 'ready',
    step: 0,
    last: null,
    running: null,
    done: new Map(),
    leftOut: new Set(),
    loads: new Map(),
    rest: null,
    chains: new Map(steps.flatMap(({ chain }, place) => (chain ? [[place, chain.plan]] : []))),
    live: [],
    signs: [],
    endedBySign: false,
  };
}

/**
 * Where a session stands after all that has happened in it. An event that cannot come where it
 * stands changes nothing, so any log gives a state that can be gone on from.
 */
export function foldEvents(
  session: Pick<FloorSession, 'steps'>,
  log: readonly FloorEvent[],
): FloorState {
  return effectiveEvents(log).events.reduce(
    (state, event) => happen(session, state, event),
    startState(session),
  );
}
