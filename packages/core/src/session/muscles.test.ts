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
    expect(session(['shins']).refused).toMatchObject([{ code: 'session.nothing-for-muscle' }]);
  });
});

describe('a chosen lift can be overruled', () => {
  const by = { exercise: 'chin-up', equipment: 'station' };

  it('by another exercise, which is marked with the one that was chosen', () => {
    const plan = session(['lats'], { overrules: [{ exercise: 'cable-pulldown', by }] });
    const [lift] = doneIn(plan);
    expect(lift?.lift.exercise.id).toBe('chin-up');
    expect(lift?.overruled.exercise).toEqual({ chosen: 'cable-pulldown' });
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
    expect(kept?.refused).toMatchObject([{ what: 'exercise' }]);
    const same = {
      exercise: 'cable-pulldown',
      by: { exercise: 'cable-pulldown', equipment: 'pulldown' },
    };
    expect(session(['lats'], { overrules: [same] }).lifts).toEqual(session(['lats']).lifts);
  });
});
