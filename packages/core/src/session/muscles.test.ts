import { describe, expect, it } from 'vitest';
import type { MuscleId } from '../anatomy/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import type { LiftIntent, MusclesIntent } from './Intent.ts';
import type { PlanGym } from './PlanGym.ts';
import { planSession } from './planSession.ts';

const { window, tempo, sets, restSeconds } = pulldown;
const done = { window, tempo, sets, restSeconds };
const stationed: PlanGym = {
  ...gym,
  stations: [
    { station: 'high-pulley', equipment: 'pulldown' },
    { station: 'chin-up-bar', equipment: 'station' },
    { station: 'flat-bench' },
  ],
};

function session(
  muscles: readonly MuscleId[],
  more: Partial<MusclesIntent> = {},
  who: Client = client,
  ...lifts: readonly LiftIntent[]
) {
  const intent = { ...intentOf(...lifts), muscles: { ...done, muscles, ...more } };
  const plan = planSession({ client: who, gym: stationed, intent });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan;
}

const doneIn = (plan: ReturnType<typeof session>) =>
  plan.lifts.flatMap((lift) => (lift.kind === 'left-out' ? [] : [lift]));
const idsIn = (plan: ReturnType<typeof session>) =>
  doneIn(plan).map(({ lift }) => lift.exercise.id);

describe('a session for muscles', () => {
  it('has each of them as a prime mover in some lift, with the reason', () => {
    const wanted = ['lats', 'mid-back', 'chest', 'biceps', 'vasti'] as const;
    const plan = session(wanted);
    for (const muscle of wanted) {
      const lift = doneIn(plan).find(({ chosenFor }) => chosenFor?.muscles.includes(muscle));
      expect(lift?.lift.exercise.direct[muscle], muscle).toBeGreaterThan(0);
      expect(lift?.chosenFor?.reasons[0]).toMatch(/^Chosen for: /);
    }
    expect(idsIn(session(wanted))).toEqual(idsIn(plan));
  });

  it('needs one lift where one does for all, several joints before single ones', () => {
    // A row moves with lats, mid-back and the back of the shoulder.
    expect(idsIn(session(['lats', 'mid-back', 'rear-deltoid']))).toHaveLength(1);
    const spans = doneIn(session(['biceps', 'lats', 'mid-back'])).map(
      ({ lift }) => lift.exercise.span,
    );
    expect(spans).toEqual(spans.toSorted());
  });

  it('takes the lift whose load is known, of two that serve', () => {
    const known = { ...client.sets[0], exercise: 'chin-up', equipment: 'station' } as const;
    const log = [
      {
        ...known,
        load: { value: 0, unit: 'kg' as const },
        date: '2027-03-08',
        reps: 8,
        end: { kind: 'failure' as const },
      },
    ];
    expect(idsIn(session(['lats'], {}, { ...client, sets: log }))).toEqual(['chin-up']);
    expect(idsIn(session(['lats']))).toEqual(['cable-pulldown']);
  });

  it('does not choose again for what a named lift moves with', () => {
    const plan = session(['lats', 'chest'], {}, client, pulldown);
    expect(idsIn(plan)[0]).toBe('cable-pulldown');
    expect(plan.lifts).toHaveLength(2);
    expect(doneIn(plan)[0]?.chosenFor).toBeUndefined();
    expect(doneIn(plan)[1]?.chosenFor?.muscles).toEqual(['chest']);
  });

  it('keeps to joints that hurt and to the clinician’s list', () => {
    const health = {
      ...client.health,
      complaints: [{ kind: 'elbow-outer', redFlags: [] }],
      clinician: { by: 'physiotherapist', agreesToTraining: true, notAllowed: ['chin-ups'] },
    } as const;
    const plan = session(['lats', 'mid-back'], {}, { ...client, health });
    for (const { lift } of doneIn(plan)) {
      expect(lift.exercise.positions).not.toContain('elbow-palms-down-pull');
      expect(lift.exercise.id).not.toBe('chin-up');
    }
    expect(doneIn(plan).length).toBeGreaterThan(0);
  });

  it('holds the body steady for somebody new', () => {
    const fresh: Client = { ...client, experience: 'new', sets: [] };
    const [lift] = doneIn(session(['chest'], {}, fresh));
    expect(['seated', 'seated-with-back', 'lying', 'chest-supported', 'face-down']).toContain(
      lift?.lift.exercise.support,
    );
  });

  it('says for which muscle there is nothing', () => {
    const plan = session(['hip-abductors', 'lats'], {}, { ...client, alone: false });
    const missing = plan.refused.find(({ what }) => what === 'muscles');
    const trained = doneIn(plan).flatMap(({ chosenFor }) => chosenFor?.muscles ?? []);
    expect(trained.includes('hip-abductors')).toBe(missing === undefined);
    expect(session(['shins']).refused).toMatchObject([
      { what: 'muscles', code: 'session.nothing-for-muscle' },
    ]);
  });

  it('says nothing of muscles where none is named', () => {
    const plan = planSession({ client, gym: stationed, intent: intentOf(pulldown) });
    expect(plan.kind === 'session' && plan.refused).toEqual([]);
    expect(plan.kind === 'session' && plan.lifts).toHaveLength(1);
  });

  it('chooses again for what a named lift would train that cannot be done', () => {
    const nowhere = { ...pulldown, equipment: 'nowhere' };
    const plan = session(['lats'], {}, client, nowhere);
    expect(plan.lifts.map(({ kind }) => kind)).toEqual(['left-out', 'planned']);
  });

  it('knows from the log and from named lifts what stands in a gym that names no stations', () => {
    const at = (id: string) => (id === 'pulldown' ? 'pulley' : id);
    const bare: PlanGym = {
      ...gym,
      equipment: gym.equipment.map((item) => ({ ...item, id: at(item.id) })),
    };
    const placesOf = (who: Client, ...lifts: readonly LiftIntent[]) => {
      const intent = { ...intentOf(...lifts), muscles: { ...done, muscles: ['lats'] as const } };
      const plan = planSession({ client: who, gym: bare, intent });
      if (plan.kind !== 'session') throw new Error(plan.kind);
      return doneIn(plan).map(({ lift }) => lift.equipment.id);
    };
    const fresh = { ...client, sets: [] };
    expect(placesOf(fresh)).not.toContain('pulley');
    const log = client.sets.map((set) => ({ ...set, equipment: at(set.equipment) }));
    expect(placesOf({ ...client, sets: log })).toEqual(['pulley']);
    // a pushdown is done on the same pulley
    const pushdown = { ...pulldown, exercise: 'cable-pushdown', equipment: 'pulley' };
    expect(placesOf(fresh, pushdown)).toEqual(['pulley', 'pulley']);
  });
});

describe('a chosen lift can be overruled', () => {
  const by = { exercise: 'chin-up', equipment: 'station' };

  it('by another exercise, which is marked with the one that was chosen', () => {
    const plan = session(['lats'], { overrules: [{ exercise: 'cable-pulldown', by }] });
    const [lift] = doneIn(plan);
    expect(lift?.lift.exercise.id).toBe('chin-up');
    expect(lift?.overruled.exercise).toEqual({ chosen: 'cable-pulldown' });
    expect(lift?.chosenFor).toEqual({
      muscles: ['lats'],
      reasons: ['Taken in place of what was chosen.'],
    });
  });

  it('by one that is done for some of its muscles only, which are named', () => {
    const wanted = ['lats', 'mid-back'] as const;
    const [chosen] = doneIn(session(wanted));
    expect(chosen?.chosenFor?.muscles).toEqual(wanted);
    const exercise = chosen?.lift.exercise.id ?? '';
    const [lift] = doneIn(session(wanted, { overrules: [{ exercise, by }] }));
    expect(lift?.lift.exercise.id).toBe('chin-up');
    // a chin-up only helps the mid-back
    expect(lift?.chosenFor?.muscles).toEqual(['lats']);
  });

  it('and keeps what was fixed of another one out of it', () => {
    const other = { exercise: 'leg-press', by, overrules: { sets: 5 } };
    const [lift] = doneIn(session(['lats'], { overrules: [other] }));
    expect(lift?.lift.exercise.id).toBe('cable-pulldown');
    expect(lift?.lift.intent.sets).toBe(2);
  });

  it('by fixed sets and loads', () => {
    const fixed = { exercise: 'cable-pulldown', overrules: { sets: 3 } };
    const [lift] = doneIn(session(['lats'], { overrules: [fixed] }));
    expect(lift?.lift.intent.sets).toBe(3);
    expect(lift?.overruled.sets).toEqual({ chosen: 2 });
  });

  it('not by one that the gym has not got, nor by itself', () => {
    const nowhere = {
      exercise: 'cable-pulldown',
      by: { exercise: 'leg-press', equipment: 'sledge' },
    };
    const [kept] = doneIn(session(['lats'], { overrules: [nowhere] }));
    expect(kept?.lift.exercise.id).toBe('cable-pulldown');
    expect(kept?.refused).toMatchObject([{ what: 'exercise', code: 'session.exercise-not-open' }]);
    expect(kept?.chosenFor).toEqual(doneIn(session(['lats']))[0]?.chosenFor);
    const same = {
      exercise: 'cable-pulldown',
      by: { exercise: 'cable-pulldown', equipment: 'pulldown' },
    };
    expect(session(['lats'], { overrules: [same] }).lifts).toEqual(session(['lats']).lifts);
  });
});
