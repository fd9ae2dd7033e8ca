import type { FloorSession } from '../session/FloorSession.ts';
import type { DoneSet, FloorState } from './FloorState.ts';

type Session = Pick<FloorSession, 'steps'>;

/** The running set is over; the rest after it begins, and the next set is ready. */
export function endSet(
  session: Session,
  state: FloorState,
  at: number,
  result: Pick<DoneSet, 'reps' | 'end' | 'pastFailure' | 'sign'>,
): FloorState {
  return goOn(session, restAfter(session, doneAt(session, state, at, result), at));
}

/** The running set is over, and how it ended is still to be told; the rest begins. */
export function askAfter(
  session: Session,
  state: FloorState,
  at: number,
  reps: number,
): FloorState {
  const ended = restAfter(session, doneAt(session, state, at, { reps }), at);
  return { ...ended, phase: 'asking' };
}

/** On to the first set after this one that is neither done nor left out. */
export function goOn({ steps }: Session, state: FloorState): FloorState {
  const isOpen = (step: number) => !state.done.has(step) && !state.leftOut.has(step);
  const places = steps.map((_, place) => place);
  const next =
    places.find((place) => place > state.step && isOpen(place)) ??
    places.find((place) => isOpen(place));
  if (next === undefined) return { ...state, phase: 'over', running: null, rest: null };
  return { ...state, phase: 'ready', step: next, running: null };
}

/** To a set of choice; one that was left out is wanted after all, one that is done is done again. */
export function goTo({ steps }: Session, state: FloorState, step: number): FloorState {
  if (steps[step] === undefined || state.endedBySign) return state;
  const leftOut = new Set(state.leftOut);
  leftOut.delete(step);
  return { ...state, phase: 'ready', step, leftOut, running: null };
}

function doneAt(
  { steps }: Session,
  state: FloorState,
  at: number,
  result: Pick<DoneSet, 'reps' | 'end' | 'pastFailure' | 'sign'>,
): FloorState {
  const { step, running } = state;
  const set: DoneSet = {
    ...result,
    step,
    load: state.loads.get(step) ?? steps[step]?.load ?? null,
    startedAt: Math.min(running?.startsAt ?? at, at),
    endedAt: at,
  };
  return {
    ...state,
    done: new Map(state.done).set(step, set),
    last: step,
    running: null,
    live: [],
  };
}

function restAfter({ steps }: Session, state: FloorState, at: number): FloorState {
  const seconds = steps[state.step]?.restSeconds ?? 0;
  return { ...state, rest: seconds > 0 ? { startedAt: at, seconds } : null };
}
