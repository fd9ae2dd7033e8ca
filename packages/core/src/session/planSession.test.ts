import { describe, expect, it } from 'vitest';
import { toKg } from '../load/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import type { LiftPlan } from './LiftPlan.ts';
import { planSession } from './planSession.ts';
import type { PlannedSession } from './SessionPlan.ts';

function plan(who: Client, ...lifts: readonly LiftIntent[]): PlannedSession {
  const session = planSession({ client: who, gym, intent: intentOf(...lifts) });
  if (session.kind !== 'session') throw new Error(session.kind);
  return session;
}

function only(session: PlannedSession): LiftPlan {
  const [lift] = session.lifts;
  if (!lift) throw new Error('no lift');
  return lift;
}

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

const chinUp: LiftIntent = {
  ...pulldown,
  exercise: 'chin-up',
  equipment: 'station',
  window: { minReps: 5, maxReps: 8 },
};

describe('planSession', () => {
  it('gives a load that the gym can make, near the set that is known', () => {
    const lift = only(plan(client, pulldown));
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    // 52.5 kg for 10 to failure at this tempo a week ago: 8 to 11 is asked of about the same load
    expect(toKg(lift.work.choice.shown)).toBeGreaterThanOrEqual(47.5);
    expect(toKg(lift.work.choice.shown)).toBeLessThanOrEqual(57.5);
    expect(lift.lift.loads.loads).toContain(lift.work.choice);
    expect(lift.basis).toMatchObject({ sets: 1, lastDate: '2027-03-08', passedOver: [] });
  });

  it('never has more repetitions in a later set', () => {
    const lift = only(plan(client, { ...pulldown, sets: 4 }));
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    const likely = lift.sets.map(({ reps }) => reps.likely);
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
    expect(lift.sets).toHaveLength(4);
  });

  it('lets one lift tire the muscles of the next', () => {
    const alone = only(plan(client, pulldown));
    const [, second] = plan(client, { ...pulldown, sets: 4 }, pulldown).lifts;
    if (alone.kind !== 'planned' || second?.kind !== 'planned') throw new Error('not planned');
    expect(second.sets[0]?.capacity).toBeLessThan(1);
    expect(second.work.choice.load).toBeLessThan(alone.work.choice.load);
  });

  it('starts a lift without history with its lightest load and names no maximum', () => {
    const row = { ...pulldown, exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells' };
    const lift = only(plan(client, row));
    if (lift.kind !== 'finding') throw new Error(lift.kind);
    expect(toKg(lift.firstTry.shown)).toBe(8);
    expect(lift.firstTry.loading).toMatchObject({ hands: 1 });
    expect(lift.basis).toStrictEqual({ sets: 0, passedOver: [] });
  });

  it('counts the body in a chin-up', () => {
    const sets = [
      {
        date: '2027-03-08',
        exercise: 'chin-up',
        equipment: 'station',
        load: { value: 0, unit: 'kg' },
        reps: 8,
        end: { kind: 'failure' },
        tempo: pulldown.tempo,
      },
    ] as const;
    const lift = only(plan({ ...client, sets }, chinUp));
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    expect(toKg(lift.work.choice.load)).toBeGreaterThanOrEqual(78);
    expect(lift.oneRepMaxKg?.likely).toBeGreaterThan(78);
  });

  it('adds up the time of its parts, with no rest after the last set of a lift', () => {
    const { timeline, minutes } = plan(client, pulldown);
    const end = timeline.at(-1);
    expect(end?.kind).toBe('work');
    expect(minutes.total).toBeCloseTo(((end?.startSeconds ?? 0) + (end?.seconds ?? 0)) / 60, 9);
    expect(minutes.rest).toBe(150 / 60);
    expect(minutes.change).toBe(2);
  });

  it('does both sides of a one-sided lift', () => {
    const row = { ...pulldown, exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells' };
    const { timeline } = plan(client, row);
    const lift = only(plan(client, row));
    if (lift.kind !== 'finding') throw new Error(lift.kind);
    const work = timeline.find(({ kind }) => kind === 'work');
    expect(work?.seconds).toBe(2 * lift.reps * lift.secondsPerRep);
  });
});

describe('planSession leaves out, with the reason,', () => {
  it.each([
    [{ exercise: 'cable-puldown' }, 'unknown-exercise', 'cable-pulldown'],
    [{ variant: 'upside-down' }, 'unknown-variant', 'neutral-grip'],
    [{ equipment: 'long-bar' }, 'unknown-equipment', 'short-bar'],
    [{ equipment: 'dumbbells' }, 'wrong-equipment', 'stack'],
    [{ window: { minReps: 100, maxReps: 100 } }, 'no-load-for-window', 'too heavy'],
  ] as const)('%o', (change, reason, words) => {
    const lift = only(plan(client, { ...pulldown, ...change }));
    expect(lift).toMatchObject({ kind: 'left-out', reason });
    expect(lift.kind === 'left-out' && lift.message).toContain(words);
  });

  it('a chin-up without a body weight', () => {
    const { bodyWeight: _, ...nameless } = client;
    expect(only(plan(nameless, chinUp))).toMatchObject({ kind: 'left-out', reason: 'no-loads' });
  });

  it('a pull with the palms down for an elbow that hurts outside, and names the set-ups without', () => {
    const health = {
      ...client.health,
      complaints: [{ kind: 'elbow-outer', redFlags: [] }],
    } as const;
    const agreed = { by: 'physiotherapist', agreesToTraining: true } as const;
    const sore = { ...client, health: { ...health, clinician: agreed } };
    const lift = only(plan(sore, pulldown));
    expect(lift).toMatchObject({ kind: 'left-out', reason: 'limits' });
    expect(lift.kind === 'left-out' && lift.message).toContain('"neutral-grip"');
    expect(only(plan(sore, { ...pulldown, variant: 'neutral-grip' })).kind).toBe('planned');
  });

  it('what the clinician has ruled out, until its last day', () => {
    const clinician = { by: 'physician', notAllowed: ['pulldowns'], until: '2027-03-15' } as const;
    const limited = { ...client, health: { ...client.health, clinician } };
    expect(only(plan(limited, pulldown))).toMatchObject({ reason: 'limits' });
    const over = { ...clinician, until: '2027-03-14' };
    const free = { ...client, health: { ...client.health, clinician: over } };
    expect(only(plan(free, pulldown)).kind).toBe('planned');
  });
});

describe('planSession names', () => {
  it('whom and where it is for, and what becomes of every lift', () => {
    const session = plan(client, pulldown, { ...pulldown, equipment: 'nowhere' });
    expect(session).toMatchObject({
      kind: 'session',
      clientName: 'Winch hand',
      gymName: 'Boathouse',
      date: '2027-03-15',
      unit: 'kg',
      refused: [],
    });
    expect(session).not.toHaveProperty('limit');
    expect(session.lifts.map(({ kind }) => kind)).toEqual(['planned', 'left-out']);
    // the pulldown that is done is offered for the one that is not
    const [, gone] = session.lifts;
    expect(gone?.kind === 'left-out' && gone.exchanges[0]).toMatchObject({ equipment: 'pulldown' });
  });

  it('what stands where from the lifts that are done, for exchanges', () => {
    const bare = {
      ...gym,
      equipment: gym.equipment.map((item) =>
        item.id === 'pulldown' ? { ...item, id: 'pulley' } : item,
      ),
    };
    const fresh = { ...client, sets: [] };
    const gone = { ...pulldown, equipment: 'nowhere' };
    const places = (...lifts: readonly LiftIntent[]) => {
      const found = planSession({ client: fresh, gym: bare, intent: intentOf(...lifts, gone) });
      const last = found.kind === 'session' ? found.lifts.at(-1) : undefined;
      return last?.kind === 'left-out' ? last.exchanges.map(({ equipment }) => equipment) : [];
    };
    expect(places()).not.toContain('pulley');
    // a pushdown hangs on the same pulley
    expect(places({ ...pulldown, exercise: 'cable-pushdown', equipment: 'pulley' })).toContain(
      'pulley',
    );
  });

  it('nothing of maxima to the young', () => {
    const young = { ...client, health: { ...client.health, ageYears: 16 } };
    const lift = only(plan(young, pulldown));
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    expect(lift).not.toHaveProperty('oneRepMaxKg');
  });

  it('no heavier load than the heaviest', () => {
    // the stack ends at 97.5 kg, with two pieces of 1.25 kg on top
    const heaviest = only(plan(client, { ...pulldown, overrules: { load: kilos(100) } }));
    if (heaviest.kind !== 'planned') throw new Error(heaviest.kind);
    expect(heaviest).not.toHaveProperty('heavier');
    expect(heaviest.lighter && toKg(heaviest.lighter.choice.shown)).toBe(98.75);
  });

  it('the set-ups that there are, and that there are none', () => {
    const none = only(plan(client, { ...pulldown, exercise: 'cable-leg-curl', variant: 'x' }));
    expect(none.kind === 'left-out' && none.message).toMatch(/It has: none\.$/);
  });
});

describe('planSession knows lowerings past failure', () => {
  const hold = { kind: 'hold', at: 'middle', maxSeconds: 20 } as const;
  const lower = (maxLowerings: number) =>
    ({ kind: 'lower', secondsEach: 6, maxLowerings }) as const;
  const helped = { ...client, alone: false };
  const cautions = (...lifts: readonly LiftIntent[]) =>
    plan(helped, ...lifts).cautions.map(({ id }) => id);
  const chained = (...stages: NonNullable<LiftIntent['chain']>['stages']): LiftIntent => ({
    ...pulldown,
    chain: { stages },
  });

  it('among other stages and lifts, and limits them where they are new', () => {
    // six are the most of a first session
    const seven = plan(helped, pulldown, chained(hold, lower(7))).lifts[1];
    if (seven?.kind !== 'planned') throw new Error(seven?.kind);
    expect(seven.refused).toMatchObject([{ code: 'extension.too-many-lowerings' }]);
    const six = plan(helped, pulldown, chained(hold, lower(6))).lifts[1];
    expect(six?.kind === 'planned' && six.refused).toEqual([]);
  });

  it('and warns of soreness only where some are done', () => {
    const id = 'first-lowering-heavy-work';
    expect(cautions(pulldown, chained(hold, lower(1)))).toContain(id);
    expect(cautions(chained(lower(1)), pulldown)).toContain(id);
    expect(cautions(pulldown, chained(hold))).not.toContain(id);
    expect(cautions(pulldown)).not.toContain(id);
    // refused, so none is done
    expect(cautions(chained(lower(7)))).not.toContain(id);
  });
});

describe('planSession keeps to a person’s limits', () => {
  it('holds loads to the share allowed with treated blood pressure, and leaves repetitions', () => {
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...client, health: { ...client.health, bloodPressure } };
    const heavy = { ...pulldown, window: { minReps: 1, maxReps: 3 } };
    const lift = only(plan(treated, heavy));
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    expect(lift.work.share.likely).toBeLessThanOrEqual(0.8);
    expect(lift.reason).toBe('capped');
  });

  it('asks first where a sign of disease was named', () => {
    const health = { ...client.health, symptoms: ['chest-discomfort'] } as const;
    const answer = planSession({ client: { ...client, health }, gym, intent: intentOf(pulldown) });
    expect(answer).toMatchObject({ kind: 'ask-first' });
    expect(answer).toMatchObject({ clientName: 'Winch hand', date: '2027-03-15' });
    expect(answer.kind === 'ask-first' && answer.reasons.join(' ')).toMatch(/\w\.$/);
    // once each, and nobody whom only a sore elbow asks for
    const complaints = [{ kind: 'elbow-outer', redFlags: [] }] as const;
    const sore = planSession({
      client: { ...client, health: { ...health, complaints } },
      gym,
      intent: intentOf(pulldown),
    });
    for (const one of [answer, sore]) {
      expect(one.kind === 'ask-first' && one.ask).toEqual(['physician', 'emergency-services']);
    }
  });
});
