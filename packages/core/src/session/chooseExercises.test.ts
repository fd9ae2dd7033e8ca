import { describe, expect, it } from 'vitest';
import { exercises, type MuscleId } from '../anatomy/index.ts';
import { type ComplaintId, limitsFor } from '../safety/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import { chooseExercises } from './chooseExercises.ts';
import { equipmentFor } from './equipmentFor.ts';
import type { PlanGym } from './PlanGym.ts';
import { stationsAt } from './stationsAt.ts';

const context = { intensity: 'vigorous', alone: true, date: '2027-03-15' } as const;
const stationed: PlanGym = {
  ...gym,
  equipment: [
    ...gym.equipment,
    {
      kind: 'stack',
      id: 'tower',
      name: 'Tower',
      first: { value: 10, unit: 'kg' },
      rest: [],
      pulleyRatio: 1,
    },
  ],
  stations: [
    { station: 'high-pulley', equipment: 'pulldown' },
    { station: 'high-pulley', equipment: 'tower' },
    { station: 'chin-up-bar', equipment: 'station' },
    { station: 'flat-bench' },
  ],
};
const place = (who: Client = client, where: PlanGym = stationed) => ({
  client: who,
  gym: where,
  limits: limitsFor(who.health, context),
  stations: stationsAt(where, []),
});
const choose = (wanted: readonly MuscleId[], ...at: Parameters<typeof place>) =>
  chooseExercises(wanted, place(...at));
const done = (exercise: string, equipment: string): ClientSet => ({
  date: '2027-03-08',
  exercise,
  equipment,
  load: { value: 20, unit: 'kg' },
  reps: 8,
  end: { kind: 'failure' },
});

describe('chooseExercises', () => {
  it('says how much of its work falls on what is wanted, and for which muscles it is', () => {
    const { chosen, without } = choose(['lats']);
    expect(without).toEqual([]);
    const [one] = chosen;
    // of a cable pulldown 42 % is for the lats
    expect(one).toMatchObject({
      exercise: 'cable-pulldown',
      equipment: 'pulldown',
      muscles: ['lats'],
    });
    expect(one?.reasons[0]).toMatch(/^Chosen for: lat/i);
    expect(one?.reasons[1]).toMatch(/^42 % of its work/);
    const both = choose(['lats', 'teres-major']).chosen[0];
    expect(both?.reasons[0]).toMatch(/^Chosen for: [^,]+, [^,]+\.$/);
    expect(both?.reasons[1]).toMatch(/^\d+ % of its work/);
  });

  it('gives every reason in words and none besides', () => {
    const [one] = choose(['lats'], { ...client, sets: [], alone: false }).chosen;
    expect(one).toStrictEqual({
      exercise: 'straight-arm-cable-pulldown',
      equipment: 'pulldown',
      muscles: ['lats'],
      reasons: ['Chosen for: lats.', '55 % of its work falls on what is wanted.'],
    });
  });

  it('counts a muscle that only helps by half', () => {
    // mid-back: 0.20 of a bent-over row, which the erectors help with 0.12, are 0.26; of a one-arm
    // row it is 0.22
    const ids = choose(['mid-back', 'spinal-erectors']).chosen.map(({ exercise }) => exercise);
    expect(ids.toSorted()).toEqual(['barbell-bent-over-row', 'barbell-deadlift']);
  });

  it('takes an exercise in the set-up that a joint leaves open', () => {
    const complaints = [{ kind: 'shoulder-front-bottom-of-press', redFlags: [] }] as const;
    const clinician = { by: 'physiotherapist', agreesToTraining: true } as const;
    const sore = { ...client, health: { ...client.health, complaints, clinician } };
    const [one] = choose(['chest'], sore).chosen;
    expect(one).toMatchObject({ exercise: 'dumbbell-fly', variant: 'on-floor' });
    // where there is nothing but the floor, a push-up would need a stop for the shoulder and handles
    // for the wrist: two set-ups at once are not planned
    const floor = { ...gym, equipment: gym.equipment.filter(({ kind }) => kind === 'body') };
    const onFloor = (...kinds: readonly ComplaintId[]) => {
      const health = { ...sore.health, complaints: kinds.map((kind) => ({ kind, redFlags: [] })) };
      return choose(['chest'], { ...client, health }, floor).chosen;
    };
    expect(onFloor('shoulder-front-bottom-of-press')).toMatchObject([
      { exercise: 'push-up', variant: 'to-stop' },
    ]);
    expect(onFloor('shoulder-front-bottom-of-press', 'wrist')).toEqual([]);
    const [usual] = choose(['chest']).chosen;
    expect(usual).not.toHaveProperty('variant');
  });

  it('passes over what cannot be loaded for this person', () => {
    // a chin-up is done before, but without a body weight nobody knows its load
    const { bodyWeight: _, ...nameless } = client;
    const sets = [done('chin-up', 'station')];
    const ids = choose(['lats'], { ...nameless, sets }).chosen.map(({ exercise }) => exercise);
    expect(ids).toHaveLength(1);
    expect(ids).not.toContain('chin-up');
  });

  it('leaves a bar over the chest alone to those who end before failure', () => {
    const only = {
      ...gym,
      equipment: gym.equipment.filter(({ id }) => id === 'short-bar'),
      stations: [{ station: 'flat-bench' }, { station: 'rack' }],
    } as const;
    expect(choose(['chest'], client, only)).toEqual({ chosen: [], without: ['chest'] });
    // with treated blood pressure two repetitions are left in every set
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...client, health: { ...client.health, bloodPressure } };
    expect(choose(['chest'], treated, only).chosen).toMatchObject([
      { exercise: 'barbell-bench-press' },
    ]);
  });

  it('prefers a load that is known, and says so', () => {
    const known = { ...client, sets: [done('chin-up', 'station')] };
    const [one] = choose(['lats'], known).chosen;
    expect(one).toMatchObject({ exercise: 'chin-up', equipment: 'station' });
    expect(one?.reasons.join(' ')).toContain('Its load is known from the log.');
    const fresh = choose(['lats'], { ...client, sets: [] }).chosen[0];
    expect(fresh?.reasons.join(' ')).not.toContain('from the log');
  });

  it('holds the body steady for somebody new only', () => {
    const reasons = (experience: Client['experience']) =>
      choose(['lats'], { ...client, experience, sets: [] }).chosen[0]?.reasons.join(' ');
    expect(reasons('new')).toContain('held steady');
    expect(reasons('some')).not.toContain('held steady');
  });

  it('takes no exercise for which a muscle is no prime mover, and names what nothing trains', () => {
    const { chosen, without } = choose(['lats', 'shins']);
    expect(without).toEqual(['shins']);
    expect(chosen.flatMap(({ muscles }) => muscles)).toEqual(['lats']);
    for (const { exercise, muscles } of choose(['biceps', 'lats', 'chest', 'vasti']).chosen) {
      const found = exercises.find(({ id }) => id === exercise);
      for (const muscle of muscles) expect(found?.direct[muscle]).toBeGreaterThanOrEqual(0.1);
      expect(found?.timed ?? false).toBe(false);
      expect(found?.loads).not.toEqual(['band']);
    }
  });

  it('puts lifts of several joints first', () => {
    for (const [large, small] of [
      ['mid-back', 'biceps'],
      ['lats', 'chest'],
      ['lats', 'front-deltoid'],
      ['lats', 'side-deltoid'],
      ['lats', 'upper-traps'],
      ['glutes', 'gastrocnemius'],
    ] as const) {
      const ids = choose([small, large]).chosen.map(({ exercise }) => exercise);
      const spans = ids.map((id) => exercises.find((one) => one.id === id)?.span);
      expect(spans, `${large} and ${small}`).toEqual(['compound', 'isolation']);
    }
  });

  it('chooses nothing where a clinician’s list cannot be read', () => {
    const clinician = { by: 'physician', notAllowed: ['the usual nonsense'] } as const;
    const limited = { ...client, health: { ...client.health, clinician } };
    expect(choose(['lats'], limited)).toEqual({ chosen: [], without: ['lats'] });
  });
});

describe('equipmentFor', () => {
  const [pull] = exercises.filter(({ id }) => id === 'cable-pulldown');
  if (!pull) throw new Error('no pulldown');
  const at = (sets: readonly ClientSet[], except?: string) =>
    equipmentFor(pull, place({ ...client, sets }), except)?.id;

  it('is the first that is able, or where it was done last', () => {
    expect(at([])).toBe('pulldown');
    expect(at([done('cable-pulldown', 'tower')])).toBe('tower');
    expect(at([done('cable-pulldown', 'tower'), done('cable-pulldown', 'pulldown')])).toBe(
      'pulldown',
    );
    expect(at([done('cable-row', 'tower')])).toBe('pulldown');
    expect(at([done('cable-pulldown', 'tower'), done('cable-pulldown', 'gone')])).toBe('tower');
  });

  it('is another one than the one that is left out, or none', () => {
    expect(at([], 'pulldown')).toBe('tower');
    expect(at([done('cable-pulldown', 'pulldown')], 'pulldown')).toBe('tower');
    const bare = { ...stationed, stations: [] };
    const stations = stationsAt(bare, []);
    expect(equipmentFor(pull, { client, gym: bare, stations })).toBeUndefined();
  });

  it('can be loaded: a chin-up needs a body weight', () => {
    const [chin] = exercises.filter(({ id }) => id === 'chin-up');
    const { bodyWeight: _, ...nameless } = client;
    expect(chin && equipmentFor(chin, place())?.id).toBe('station');
    expect(chin && equipmentFor(chin, place(nameless))).toBeUndefined();
    expect(pulldown.equipment).toBe('pulldown');
  });
});
