import { describe, expect, it } from 'vitest';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent } from './Intent.ts';
import { type LiftPlanner, planLift } from './planLift.ts';
import { planSession } from './planSession.ts';
import { rememberLifts } from './rememberLifts.ts';
import { intent, press, question, row, turns } from './twoLifts.testing.ts';

/** A planner that counts what it works out, and one that remembers it. */
function counted(most?: number) {
  const asked: string[] = [];
  const planOne: LiftPlanner = (lift) => {
    asked.push(lift.lift.intent.exercise);
    return planLift(lift);
  };
  return { asked, remembering: rememberLifts(most, planOne) };
}

describe('rememberLifts', () => {
  it('works out only the lifts that a change touches', () => {
    const { asked, remembering } = counted();
    planSession(question, remembering);
    expect(asked).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
    const renamed = { ...client, name: 'Somebody else' };
    planSession({ ...question, client: renamed }, remembering);
    expect(asked).toHaveLength(2);
    const last = { ...row, sets: row.sets + 1 };
    planSession({ ...question, intent: { ...intent, lifts: [pulldown, last] } }, remembering);
    expect(asked.slice(2)).toEqual(['barbell-bent-over-row']);
  });

  it('asks for no lift again for sets of another one', () => {
    const { asked, remembering } = counted();
    planSession(question, remembering);
    const [known] = client.sets;
    if (!known) throw new Error('no set');
    const elsewhere = [
      { ...known, exercise: 'cable-row' },
      { ...known, equipment: 'tower' },
    ];
    const more = { ...client, sets: [...client.sets, ...elsewhere] };
    planSession({ ...question, client: more }, remembering);
    expect(asked).toHaveLength(2);
    const own = { ...client, sets: [...client.sets, { ...known, date: '2027-03-10' }] };
    planSession({ ...question, client: own }, remembering);
    // the row comes after a pulldown with another load
    expect(asked.slice(2)).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
  });

  it('asks again where the plates or the equipment differ, or muscles are warm', () => {
    const { asked, remembering } = counted();
    const only = { ...intent, lifts: [row] };
    const at = (where: typeof gym) =>
      planSession({ ...question, gym: where, intent: only }, remembering);
    at(gym);
    at({ ...gym, name: 'Quay' });
    expect(asked).toHaveLength(1);
    at({ ...gym, plates: gym.plates.slice(1) });
    expect(asked).toHaveLength(2);
    const bar = { kind: 'barbell', id: 'short-bar', name: 'Bar' } as const;
    at({ ...gym, equipment: [{ ...bar, bar: { value: 20, unit: 'kg' } }] });
    expect(asked).toHaveLength(3);
    // the load of the row is still looked for, which warms the lats and is not counted as fatigue
    const after = { ...intent, lifts: [row, pulldown] };
    planSession({ ...question, intent: { ...intent, lifts: [pulldown] } }, remembering);
    expect(planSession({ ...question, intent: after }, remembering)).toEqual(
      planSession({ ...question, intent: after }),
    );
    expect(asked.slice(3)).toEqual(['cable-pulldown', 'cable-pulldown']);
  });

  it('asks for rounds again when their second lift changes', () => {
    const { asked, remembering } = counted();
    const [known] = client.sets;
    if (!known) throw new Error('no set');
    const pressed = { ...known, exercise: press.exercise, equipment: press.equipment };
    const both = {
      ...client,
      sets: [known, { ...pressed, load: { value: 20, unit: 'kg' } }],
    } as const;
    const rounds = (second: LiftIntent) => {
      const lifts = [{ ...pulldown, join: turns }, second];
      const asking = { ...question, client: both, intent: { ...intent, lifts } };
      return { plan: planSession(asking, remembering), fresh: planSession(asking) };
    };
    rounds(press);
    expect(rounds(press).plan).toEqual(rounds(press).fresh);
    // two lifts are one question
    expect(asked).toEqual(['cable-pulldown']);
    const longer = rounds({ ...press, sets: 3 });
    expect(longer.plan).toEqual(longer.fresh);
    expect(asked).toEqual(['cable-pulldown', 'cable-pulldown']);
  });

  it('keeps as many answers as it may, and forgets the one longest unused first', () => {
    const { asked, remembering } = counted(2);
    const only = (lift: LiftIntent) =>
      planSession({ ...question, intent: { ...intent, lifts: [lift] } }, remembering);
    only(pulldown);
    only(row);
    only(pulldown);
    only(row);
    only(pulldown);
    expect(asked).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
    // the row has been unused for longest
    only(press);
    only(pulldown);
    expect(asked.slice(2)).toEqual(['dumbbell-bench-press']);
    only(row);
    expect(asked.slice(3)).toEqual(['barbell-bent-over-row']);
  });
});
