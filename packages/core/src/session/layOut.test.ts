import { describe, expect, it } from 'vitest';
import type { MuscleId } from '../anatomy/index.ts';
import { type CapacityState, REST_RECOVERY_PER_SECOND } from '../capacity/index.ts';
import type { Stage } from '../extension/index.ts';
import { limitsFor } from '../safety/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent } from './Intent.ts';
import type { LiftPlan } from './LiftPlan.ts';
import { layOut } from './layOut.ts';
import { liftOf } from './liftOf.ts';
import type { KeptLift } from './limit/LiftPieces.ts';
import type { LiftQuestion } from './planLift.ts';
import type { SettledLift, UnsettledLift } from './settleLift.ts';

const limits = limitsFor(client.health, {
  intensity: 'vigorous',
  alone: true,
  date: '2027-03-15',
  loweringHeavy: true,
});
const turns = { kind: 'in-turn', transitionSeconds: 30 } as const;

function settled(change: Partial<LiftIntent> = {}): SettledLift {
  const lift = liftOf({ ...pulldown, ...change }, gym, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  return { kind: 'settled', lift, overruled: {}, refused: [] };
}

const pull = settled();
const press = settled({ exercise: 'dumbbell-bench-press', equipment: 'dumbbells' });
const curl = settled({ exercise: 'dumbbell-curl', equipment: 'dumbbells' });
const gone: UnsettledLift = {
  kind: 'unsettled',
  intent: pulldown,
  reason: 'limits',
  message: 'Not open.',
};
const tired: Readonly<Record<string, CapacityState>> = {
  'cable-pulldown': { lats: { fast: 0.2, slow: 0.1 } },
  'dumbbell-bench-press': { chest: { fast: 0.4, slow: 0 } },
};

/**
 * Lays lifts out with plans of two sets of five repetitions of 6 s with 150 s between, and no warm-up:
 * 210 s. Each leaves its muscles as above; those of the exercises in `without` have no load.
 */
function laidOut(
  lifts: readonly (SettledLift | UnsettledLift)[],
  {
    kept,
    without = [],
    stages,
  }: {
    readonly kept?: readonly KeptLift[];
    readonly without?: readonly string[];
    readonly stages?: readonly Stage[];
  } = {},
) {
  const asked: LiftQuestion[] = [];
  const planOf = (question: LiftQuestion): LiftPlan => {
    const { lift } = question;
    const { intent } = lift;
    asked.push(question);
    if (without.includes(lift.exercise.id)) {
      const reason = 'no-load-for-window';
      return { kind: 'left-out', intent, reason, message: '', exchanges: [] };
    }
    return {
      kind: 'planned',
      lift,
      warmUp: { kind: 'none' },
      sets: [{ reps: { likely: 5 } }, { reps: { likely: 5 } }],
      ...(stages && { chain: { addedSeconds: 0, stages: stages.map((stage) => ({ stage })) } }),
    } as unknown as LiftPlan;
  };
  const endOf = ({ lift }: LiftQuestion) => tired[lift.exercise.id] ?? {};
  const answer = layOut(
    { lifts, client, gym, date: '2027-03-15', limits, changeSeconds: 90 },
    (question) => ({
      plan: planOf(question),
      end: endOf(question),
      ...(question.joined && {
        second: { plan: planOf(question.joined.second), end: endOf(question.joined.second) },
      }),
    }),
    kept,
  );
  return { ...answer, asked };
}

/** What is left of the fast part after so many seconds. */
const after = (seconds: number) => Math.exp(-REST_RECOVERY_PER_SECOND * seconds);

describe('layOut', () => {
  it('begins fresh, and rests what a lift has tired over the changes and the lifts between', () => {
    const { asked } = laidOut([pull, press, curl, pull]);
    const [first, second, , last] = asked;
    expect(first?.start).toEqual({ own: {}, carried: {} });
    expect([...(first?.warm ?? [])]).toEqual([]);
    // six tenths of it shows in another exercise, after a change of 90 s
    expect(second?.start.own).toEqual({});
    expect(second?.start.carried.lats?.fast).toBeCloseTo(0.6 * 0.2 * after(90), 12);
    expect(second?.start.carried.lats?.slow).toBeCloseTo(0.06, 12);
    // three changes and twice 210 s
    expect(last?.start.own.lats?.fast).toBeCloseTo(0.2 * after(690), 12);
    expect(last?.start.own.lats?.slow).toBe(0.1);
    // two changes and the curl
    expect(last?.start.carried.chest?.fast).toBeCloseTo(0.6 * 0.4 * after(390), 12);
  });

  it('counts muscles as warm that lifts before have worked, helpers too', () => {
    const { asked } = laidOut([pull, press, curl]);
    const pulled = Object.keys(pull.lift.shares) as MuscleId[];
    expect([...(asked[1]?.warm ?? [])].toSorted()).toEqual(pulled.toSorted());
    const pressed = Object.keys(press.lift.shares) as MuscleId[];
    expect(asked[2]?.warm).toEqual(new Set([...pulled, ...pressed]));
  });

  it('plans the others as if a lift that is left out had not been wished', () => {
    const plain = laidOut([pull, press, pull]);
    const free = ({ start, warm }: LiftQuestion) => ({ start, warm });
    const unsettled = laidOut([gone, pull, gone, press, pull]);
    expect(unsettled.asked.map(free)).toEqual(plain.asked.map(free));
    expect(unsettled.lifts.map(({ kind }) => kind)).toEqual([
      'left-out',
      'planned',
      'left-out',
      'planned',
      'planned',
    ]);
    expect(unsettled.lifts[0]).toEqual({
      kind: 'left-out',
      intent: pulldown,
      reason: 'limits',
      message: 'Not open.',
      exchanges: [],
    });
    const noLoad = laidOut([curl, pull, curl, press, curl, pull], { without: ['dumbbell-curl'] });
    const asked = noLoad.asked.filter(({ lift }) => lift.exercise.id !== 'dumbbell-curl');
    expect(asked.map(free)).toEqual(plain.asked.map(free));
  });

  it('keeps what a time limit leaves of each lift', () => {
    const kept = [
      { lift: 0, sets: 1, skipSteps: 0, skipChain: false },
      { lift: 2, sets: 3, skipSteps: 2, skipChain: true },
    ];
    const { lifts, asked } = laidOut([pull, press, curl], { kept });
    expect(
      asked.map(({ lift, skipSteps, skipChain }) => [
        lift.exercise.id,
        lift.intent.sets,
        skipSteps,
        skipChain,
      ]),
    ).toEqual([
      ['cable-pulldown', 1, 0, false],
      ['dumbbell-curl', 3, 2, true],
    ]);
    expect(lifts[1]).toMatchObject({ kind: 'left-out', reason: 'no-time', exchanges: [] });
    const all = laidOut([pull]).asked[0];
    expect(all).toMatchObject({ skipSteps: 0, skipChain: false });
    expect(all?.lift.intent.sets).toBe(2);
  });

  it('asks for two lifts at once where they are done in rounds', () => {
    const joined = settled({ join: turns });
    const { asked, lifts, timeline } = laidOut([joined, press, pull]);
    expect(asked[0]?.joined?.how).toEqual(turns);
    expect(asked[0]?.joined?.second.lift.exercise.id).toBe('dumbbell-bench-press');
    expect(asked[0]?.joined?.second.start).toEqual({ own: {}, carried: {} });
    expect(lifts.map(({ kind }) => kind)).toEqual(['planned', 'planned', 'planned']);
    expect(timeline.filter(({ kind }) => kind === 'work')).toHaveLength(6);
    // both have worked
    expect(asked.at(-1)?.start.own.lats?.slow).toBe(0.1);
    expect(asked.at(-1)?.start.carried.chest?.fast).toBeGreaterThan(0);
  });

  it('says why a lift is joined with none, but not where the time takes the other', () => {
    const joined = settled({ join: turns });
    for (const lifts of [[joined], [joined, gone, press]]) {
      const [question] = laidOut(lifts).asked;
      expect(question?.joined).toBeUndefined();
      expect(question?.refused).toMatchObject([{ what: 'join', code: 'session.join-no-second' }]);
    }
    const kept = [{ lift: 0, sets: 2, skipSteps: 0, skipChain: false }];
    const [question] = laidOut([joined, press], { kept }).asked;
    expect(question?.joined).toBeUndefined();
    expect(question?.refused).toEqual([]);
  });

  it('takes the lowerings of chains before from those that a person may do', () => {
    const count = limits.hardLowerings?.count ?? 0;
    expect(count).toBeGreaterThan(2);
    const left = (stages?: readonly Stage[], without?: readonly string[]) =>
      laidOut([pull, pull], { ...(stages && { stages }), ...(without && { without }) }).asked.map(
        (question) => question.limits.hardLowerings?.count,
      );
    expect(left([{ kind: 'lower', secondsEach: 5, maxLowerings: 2 }])).toEqual([count, count - 2]);
    expect(left()).toEqual([count, count]);
    expect(left([], ['cable-pulldown'])).toEqual([count, count]);
  });
});
