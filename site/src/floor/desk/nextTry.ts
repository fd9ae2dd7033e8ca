import type { ReachableLoad } from '@windlass/core/equipment';
import {
  enduranceCurves,
  type FindingReport,
  type FindingTry,
  findingProtocol,
  type SetEnd,
} from '@windlass/core/strength';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { FloorHappening } from '../run/FloorEvent.ts';
import type { DoneSet, FloorState } from '../run/FloorState.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { doneLifts } from './doneLifts.ts';

/** How the search for the load of a lift goes on, or that it ends without one. */
export interface NextTry {
  readonly what: readonly FloorHappening[];
  readonly isTooHeavy: boolean;
}

/**
 * What comes after the tries of the lift that comes next: a heavier or lighter try, the work sets
 * at the load that was found, or nothing more where even the lightest load is too heavy. Of two
 * sides the weaker one counts.
 */
export function nextTry(planned: Planned, session: FloorSession, state: FloorState): NextTry {
  const place = session.steps[state.step]?.lift ?? -1;
  const lift = doneLifts(planned)[place];
  if (lift?.kind !== 'finding') return { what: [], isTooHeavy: false };
  const { exercise, loads, intent } = lift.lift;
  const answer = findingProtocol<ReachableLoad>({
    choices: loads.loads,
    window: intent.window,
    secondsPerRep: lift.secondsPerRep,
    curve: enduranceCurves[exercise.endurance],
    tries: triesOf(session, state, place),
  });
  const open = (kind: 'try' | 'work') =>
    session.steps.flatMap((step, at) =>
      step.lift === place && step.kind === kind && !state.done.has(at) ? [at] : [],
    );
  switch (answer.kind) {
    case 'try': {
      const number = session.steps[state.step]?.number;
      const steps = open('try').filter((at) => session.steps[at]?.number === number);
      return steps.length > 0
        ? { what: [{ kind: 'loaded', steps, load: answer.choice }], isTooHeavy: false }
        : work(answer.choice);
    }
    case 'found':
    case 'start-and-learn':
      return work(answer.load.choice);
    case 'all-too-heavy':
    case 'no-loads':
      return {
        what: [{ kind: 'left-out', steps: [...open('try'), ...open('work')] }],
        isTooHeavy: true,
      };
  }

  function work(load: ReachableLoad): NextTry {
    return {
      what: [
        { kind: 'loaded', steps: open('work'), load },
        { kind: 'left-out', steps: open('try') },
      ],
      isTooHeavy: false,
    };
  }
}

/** The tries of a lift whose every side is done and told. */
function triesOf(session: FloorSession, state: FloorState, place: number): readonly FindingTry[] {
  const places = session.steps.flatMap((step, at) =>
    step.lift === place && step.kind === 'try' ? [{ number: step.number, at }] : [],
  );
  const numbers = Map.groupBy(places, ({ number }) => number);
  return [...numbers.values()].flatMap((sides) => {
    const done = sides.flatMap(({ at }) => state.done.get(at) ?? []);
    const load = sides[0] && stepLoad(session, state, sides[0].at);
    const weakest = done.toSorted((a, b) => reach(a) - reach(b))[0];
    if (done.length < sides.length || !weakest?.end || !load) return [];
    return [{ load: load.load, reps: weakest.reps, report: reportOf(weakest.end) }];
  });
}

function reach({ reps, end }: DoneSet): number {
  return reps + (end?.kind === 'reserve' ? end.repsLeft : end?.kind === 'more' ? end.atLeast : 0);
}

const FAR_TOO_EASY = 15;

function reportOf(end: SetEnd): FindingReport {
  if (end.kind === 'failure') return 'failed';
  if (end.kind === 'reserve') return { repsLeft: end.repsLeft };
  return end.atLeast >= FAR_TOO_EASY ? 'far-too-easy' : { repsLeft: end.atLeast };
}
