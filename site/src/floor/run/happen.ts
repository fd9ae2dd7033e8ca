import type { FloorSession } from '../session/FloorSession.ts';
import type { FloorEvent } from './FloorEvent.ts';
import type { FloorState } from './FloorState.ts';
import { happenInSet, isRepCount } from './happenInSet.ts';
import { endSet, goOn, goTo } from './moves.ts';

type Session = Pick<FloorSession, 'steps'>;

/** The state after one more event; the same state where the event cannot come now. */
export function happen(session: Session, state: FloorState, event: FloorEvent): FloorState {
  const { steps } = session;
  switch (event.kind) {
    case 'begun':
      return begin(session, state, event);
    case 'done':
      if (state.phase !== 'ready') return state;
      return endSet(session, withRunning(state, event.at, event.at), event.at, {
        reps: steps[state.step]?.reps ?? 0,
      });
    case 'put-right': {
      const done = state.done.get(event.step);
      if (!done || !isRepCount(event.reps)) return state;
      const { end: _, ...rest } = done;
      const right = { ...rest, reps: event.reps, ...(event.end && { end: event.end }) };
      return { ...state, done: new Map(state.done).set(event.step, right) };
    }
    case 'gone-to':
      return state.phase === 'ready' || state.phase === 'over'
        ? goTo(session, state, event.step)
        : state;
    case 'left-out': {
      if (state.phase !== 'ready' && state.phase !== 'over') return state;
      const leftOut = new Set([...state.leftOut, ...event.steps.filter((step) => steps[step])]);
      const next = { ...state, leftOut };
      return leftOut.has(state.step) ? goOn(session, next) : next;
    }
    case 'loaded': {
      const loads = new Map(state.loads);
      for (const step of event.steps) if (steps[step]) loads.set(step, event.load);
      return { ...state, loads };
    }
    case 'rest-changed':
      if (!state.rest) return state;
      return {
        ...state,
        rest: { ...state.rest, seconds: Math.max(0, state.rest.seconds + event.seconds) },
      };
    case 'rest-over':
      return state.rest ? { ...state, rest: null } : state;
    case 'carried-on': {
      const chains = new Map(state.chains);
      if (event.plan === null) chains.delete(event.step);
      else if (steps[event.step]) chains.set(event.step, event.plan);
      return { ...state, chains };
    }
    case 'sign':
      return sign(session, state, event);
    case 'undone':
    case 'redone':
      return state;
    default:
      return happenInSet(session, state, event);
  }
}

type EventOf<K extends FloorEvent['kind']> = Extract<FloorEvent, { kind: K }>;

function begin(session: Session, state: FloorState, event: EventOf<'begun'>): FloorState {
  const isThere = state.phase === 'ready' && session.steps[state.step] !== undefined;
  if (!isThere) return state;
  const startsAt = event.at + event.leadInSeconds * 1000;
  const begun = withRunning(state, event.at, startsAt);
  const count = event.counted ? { startsAt, repsBefore: 0, told: 0 } : null;
  return {
    ...begun,
    phase: 'lifting',
    rest: null,
    running: begun.running && { ...begun.running, count },
  };
}

function withRunning(state: FloorState, begunAt: number, startsAt: number): FloorState {
  return { ...state, running: { begunAt, startsAt, count: null, reps: 0, repsAt: [] } };
}

/** A sign ends the set at once, and what else its rule says. In a rest it is of the set before. */
function sign(session: Session, state: FloorState, event: EventOf<'sign'>): FloorState {
  const { rule, ends, at } = event;
  const isInSet = state.phase === 'lifting' || state.phase === 'past-failure';
  const ended =
    isInSet && state.running
      ? endSet(session, state, at, { reps: state.running.reps, sign: rule })
      : state.phase === 'asking'
        ? goOn(session, marked(state, rule))
        : state;
  const isAfter = state.phase === 'over' || (state.phase === 'ready' && state.rest !== null);
  const step = event.step ?? (isAfter ? (state.last ?? state.step) : state.step);
  const signs = [...state.signs, { step, rule }];
  const lift = session.steps[step]?.lift;
  const leftOut = new Set(state.leftOut);
  session.steps.forEach((one, place) => {
    const isOfIt = ends === 'the-session' || (ends === 'the-exercise' && one.lift === lift);
    if (isOfIt && !ended.done.has(place)) leftOut.add(place);
  });
  const endedBySign = state.endedBySign || ends === 'the-session';
  const next = { ...ended, signs, leftOut, endedBySign };
  return leftOut.has(next.step) ? goOn(session, next) : next;
}

function marked(state: FloorState, rule: string): FloorState {
  const last = state.done.get(state.step);
  return last
    ? { ...state, done: new Map(state.done).set(state.step, { ...last, sign: rule }) }
    : state;
}
