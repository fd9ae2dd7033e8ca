import type { LiveSetEvent } from '@windlass/core/extension';
import type { FloorSession } from '../session/FloorSession.ts';
import type { FloorEvent } from './FloorEvent.ts';
import type { FloorState, RunningSet } from './FloorState.ts';
import { askAfter, endSet, goOn } from './moves.ts';

type Session = Pick<FloorSession, 'steps'>;
type InSet = Extract<
  FloorEvent,
  {
    kind:
      | 'rep'
      | 'rep-less'
      | 'held'
      | 'counted-on'
      | 'failed'
      | 'stopped'
      | 'told'
      | 'live'
      | 'live-over';
  }
>;

/** As a log takes them. */
const MOST_REPS = 200;

/** Whether a number can be repetitions of a set. */
export function isRepCount(reps: number): boolean {
  return Number.isInteger(reps) && reps >= 0 && reps <= MOST_REPS;
}

/** What happens within a set, up to how it ended. */
export function happenInSet(session: Session, state: FloorState, event: InSet): FloorState {
  const { phase, running } = state;
  if (event.kind === 'told') return told(session, state, event);
  if (phase === 'past-failure') return pastFailure(session, state, event);
  if (phase !== 'lifting' || !running) return state;
  switch (event.kind) {
    case 'rep': {
      if (running.reps >= MOST_REPS || (event.by === 'count' && !running.count)) return state;
      const { count } = running;
      const isTold = event.by === 'count' && count;
      return set(state, {
        reps: running.reps + 1,
        repsAt: [...running.repsAt, event.at],
        ...(isTold && { count: { ...count, told: count.told + 1 } }),
      });
    }
    case 'rep-less':
      return set(state, {
        reps: Math.max(0, running.reps - 1),
        repsAt: running.repsAt.slice(0, -1),
      });
    case 'held':
      return set(state, { count: null });
    case 'counted-on':
      return set(state, {
        count: {
          startsAt: event.at + event.leadInSeconds * 1000,
          repsBefore: running.reps,
          told: 0,
        },
      });
    case 'failed':
      if (state.chains.has(state.step)) {
        const startsAt = Math.min(running.startsAt, event.at);
        const failed = { ...running, startsAt, count: null };
        const live = liftedSoFar(failed, event.at);
        return { ...state, phase: 'past-failure', running: failed, live };
      }
      return endSet(session, state, event.at, { reps: running.reps, end: { kind: 'failure' } });
    case 'stopped':
      return askAfter(session, state, event.at, running.reps);
    default:
      return state;
  }
}

/** What was lifted up to failure, as the log of a live set, on the clock of its first repetition. */
function liftedSoFar(
  { startsAt, reps, repsAt }: RunningSet,
  failedAt: number,
): readonly LiveSetEvent[] {
  const second = (at: number) => Math.max(0, Math.min(at, failedAt) - startsAt) / 1000;
  // A count that was put right by hand has a time for each repetition it told, in their order.
  const times = repsAt
    .slice(0, reps)
    .map(second)
    .toSorted((a, b) => a - b);
  return [
    { kind: 'started', atSeconds: 0 },
    ...times.map((atSeconds) => ({ kind: 'rep', atSeconds }) as const),
    { kind: 'failed', atSeconds: second(failedAt) },
  ];
}

function set(state: FloorState, change: Partial<RunningSet>): FloorState {
  return { ...state, running: state.running && { ...state.running, ...change } };
}

function told(
  session: Session,
  state: FloorState,
  { end }: Extract<FloorEvent, { kind: 'told' }>,
): FloorState {
  const last = state.done.get(state.step);
  if (state.phase !== 'asking' || !last) return state;
  const done = new Map(state.done).set(state.step, { ...last, ...(end && { end }) });
  return goOn(session, { ...state, done });
}

function pastFailure(session: Session, state: FloorState, event: InSet): FloorState {
  if (event.kind === 'live') return { ...state, live: [...state.live, event.event] };
  if (event.kind !== 'live-over') return state;
  const { reps, end, sign } = event.record;
  return endSet(session, state, event.at, {
    reps,
    ...(end && { end }),
    ...(sign !== undefined && { sign }),
    pastFailure: event.record,
  });
}
