import type { ReachableLoad } from '@windlass/core/equipment';
import { loadFromValue } from '@windlass/core/load';
import {
  type LoadAdvice,
  type LoggedSet,
  liftSessions,
  nextLoad,
  performedSets,
} from '@windlass/core/progress';
import { dateOfDay, dayNumber } from '@windlass/core/recovery';
import {
  type Client,
  type FindingLift,
  type PlannedLift,
  readyAfter,
} from '@windlass/core/session';
import { enduranceCurves, priorFor, strengthFrom } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Planned } from '../../planner/state/planFrom.ts';
import { dayDone } from '../log/dayDone.ts';
import { loggedSets } from '../log/loggedSets.ts';
import type { FloorState } from '../run/FloorState.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { doneLifts } from './doneLifts.ts';
import { doneWork } from './doneWork.ts';

/** What a session leaves behind. */
export interface SessionResult {
  readonly date: string;
  readonly sets: readonly LoggedSet[];
  /** By the place of a lift in the session; nothing for one that was not done. */
  readonly next: readonly (LoadAdvice | null)[];
  /** When the muscles that worked are likely ready again, or the day fixed for it; and with care. */
  readonly nextDay: { readonly likely: string; readonly cautious: string } | null;
}

/** Signs that are pain: nothing is raised after them. */
const painSigns: readonly string[] = [
  'rising-pain',
  'sharp-or-radiating-pain',
  'numbness-or-weakness',
  'pop-or-sudden-loss',
];

/**
 * The log of a session, what to load next time on each lift by the client's sets and those of
 * today, and when that may be.
 *
 * @param today the day on the wall, `YYYY-MM-DD`.
 */
export function sessionResult(
  planned: Planned,
  session: FloorSession,
  state: FloorState,
  today: string,
): SessionResult {
  const { client } = planned.question;
  const lifts = doneLifts(planned);
  const date = dayDone(
    session.date,
    client.sets.map((set) => set.date),
    today,
  );
  const sets = loggedSets(session, state, date);
  const nextDay = sets.length > 0 ? nextDayAfter(planned, session, state, date) : null;
  const next = lifts.map((lift, place) => {
    const own = sets.filter(({ exercise }) => exercise === lift.lift.exercise.id);
    if (own.length === 0) return null;
    const pain = state.signs.some(
      ({ rule, step }) => painSigns.includes(rule) && session.steps[step]?.lift === place,
    );
    return adviceFor(lift, [...knownSets(lift, client), ...own], nextDay?.likely ?? date, pain);
  });
  return { date, sets, next, nextDay };
}

function adviceFor(
  lift: PlannedLift | FindingLift,
  log: readonly LoggedSet[],
  on: string,
  pain: boolean,
): LoadAdvice {
  const { exercise, equipment, loads, intent } = lift.lift;
  const context = {
    machine: loads,
    ...(exercise.movedShare && { movedShare: exercise.movedShare }),
  };
  const { sessions } = liftSessions(log, exercise.id, context);
  const curve = enduranceCurves[exercise.endurance];
  const belief = strengthFrom({
    sets: performedSets(sessions, { exercise, curve }),
    prior: priorFor(curve),
    today: dayNumber(on),
  });
  return nextLoad({
    sessions,
    window: intent.window,
    repsInReserve: lift.kind === 'planned' ? lift.repsInReserve : 0,
    equipment,
    loads,
    on,
    secondsPerRep: lift.secondsPerRep,
    curve,
    pain,
    ...(belief.kind === 'posterior' && { posterior: belief }),
  });
}

/** The client's known sets of a lift on its equipment, as a log has them. */
function knownSets({ lift }: PlannedLift | FindingLift, client: Client): readonly LoggedSet[] {
  const { exercise, equipment, loads } = lift;
  const own = client.sets.filter(
    (set) => set.exercise === exercise.id && set.equipment === equipment.id,
  );
  return own.map((set, place) => ({
    date: set.date,
    exercise: set.exercise,
    set: own.slice(0, place + 1).filter(({ date }) => date === set.date).length,
    load: set.load,
    counts: loads.counts,
    ...(isOneHand(loads.loads, set.load) && { hands: 1 as const }),
    ...bodyWeightOf(set.bodyWeight ?? client.bodyWeight),
    reps: set.reps,
    end: set.end,
    ...(set.tempo && { tempo: formatTempo(set.tempo) }),
    equipment: set.equipment,
  }));
}

function bodyWeightOf(bodyWeight: Client['bodyWeight']) {
  return bodyWeight && { bodyWeight };
}

function isOneHand(loads: readonly ReachableLoad[], load: LoggedSet['load']): boolean {
  const same = loads.find(({ shown }) => shown === loadFromValue(load));
  return same?.loading.kind === 'fixed' && same.loading.hands === 1;
}

/**
 * The day by the work that was done. One that was fixed in the plan is as far from the day of the
 * session as it was from the day that was planned for.
 */
function nextDayAfter(
  planned: Planned,
  session: FloorSession,
  state: FloorState,
  date: string,
): SessionResult['nextDay'] {
  const { plan, question } = planned;
  const ready = readyAfter(doneWork(planned, session, state), question.client, date);
  if (!ready) return null;
  const next = plan.kind === 'session' ? plan.next : undefined;
  const likely =
    next?.overruled === undefined
      ? ready.likely.date
      : dateOfDay(dayNumber(date) + dayNumber(next.date) - dayNumber(plan.date));
  return { likely, cautious: ready.cautious.date };
}
