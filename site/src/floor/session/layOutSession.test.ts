import { planSession, sessionSheet } from '@windlass/core/session';
import { describe, expect, it } from 'vitest';
import gym from '../../../../examples/boathouse/gym.json' with { type: 'json' };
import pastFailureDay from '../../../../examples/boathouse/past-failure-day.json' with {
  type: 'json',
};
import { examples } from '../../planner/state/examples.ts';
import { type Json, setAt } from '../../planner/state/tree.ts';
import { openPlan } from './openPlan.ts';

function opened(draft: Json) {
  const plan = openPlan(draft);
  if (plan.kind === 'wrong') throw new Error(plan.message);
  return plan;
}
const namesOf = (draft: Json, lift: number) =>
  opened(draft).session.steps.filter((step) => step.lift === lift);

describe('a session on the floor', () => {
  it('has the warm-up and work sets of every lift, in order, with the loads of the sheet', () => {
    const { session, planned } = opened(examples['pull-day']);
    const sheet = sessionSheet(planSession(planned.question));
    if (sheet.kind !== 'sheet') throw new Error('the example has a sheet');
    expect(session.lifts.map(({ name }) => name)).toEqual(sheet.lifts.map(({ name }) => name));
    const [row] = sheet.lifts;
    if (row?.kind !== 'planned') throw new Error('the first lift is planned');
    const steps = session.steps.filter(({ lift }) => lift === 0);
    expect(steps.map(({ kind }) => kind)).toEqual([
      'warm-up',
      'warm-up',
      'warm-up',
      'work',
      'work',
    ]);
    expect(steps.slice(0, 3).map(({ reps }) => reps)).toEqual(row.warmUp.map(({ reps }) => reps));
    expect(steps.slice(3).map(({ expected }) => expected)).toEqual(
      row.sets.map(({ reps }) => reps),
    );
  });

  it('rests as planned, sets up between lifts, and does not rest after the last set', () => {
    const { session } = opened(examples['pull-day']);
    const rests = session.steps
      .filter(({ kind }) => kind === 'work')
      .map(({ restSeconds }) => restSeconds);
    // 150 s between the two sets of a lift, 120 s to set up the next, none between two sides.
    expect(rests).toEqual([150, 120, 150, 120, 0, 0]);
  });

  it('does two joined lifts in rounds, straight from the one to the other', () => {
    const { session } = opened(examples['leg-day']);
    const work = session.steps.filter(({ kind, lift }) => kind === 'work' && lift < 2);
    const [first, second] = work;
    expect([first?.lift, second?.lift]).toEqual([0, 1]);
    expect(first?.restSeconds).toBe(10);
    const places = session.steps.map(({ kind }) => kind);
    expect(places.lastIndexOf('warm-up')).toBeLessThan(places.indexOf('work'));
  });

  it('does one side after the other as two sets of one number', () => {
    const rows = namesOf(examples['pull-day'], 2);
    expect(rows.map(({ side, number, of }) => [side, number, of])).toEqual([
      ['left', 1, 1],
      ['right', 1, 1],
    ]);
  });

  it('has the last set of a lift go on past failure as planned, and says what is needed before', () => {
    const { session, planned } = opened({ ...pastFailureDay, gym });
    const chained = session.steps.filter(({ chain }) => chain);
    expect(chained.map(({ lift, kind, number, of }) => [lift, kind, number === of])).toEqual([
      [0, 'work', true],
      [1, 'work', true],
    ]);
    const [extension] = pastFailureDay.intent.lifts;
    expect(chained[0]?.chain).toMatchObject({
      plan: {
        exerciseId: 'leg-extension',
        load: { value: 70, unit: 'kg' },
        stages: [{ kind: 'lift' }, ...(extension?.chain.stages ?? [])],
        secondsPerRep: 6,
      },
      needs: ['A partner who lifts the load back to the top.'],
    });
    const [lift] = planned.plan.kind === 'session' ? planned.plan.lifts : [];
    const high = lift?.kind === 'planned' ? (lift.chain?.secondsUnderLoad.high ?? 0) : 0;
    expect(high).toBeGreaterThan(0);
    expect(chained[0]?.chain?.plan.maxSeconds).toBeGreaterThan(high);
  });

  it('goes on past failure on both sides, and only in the last set', () => {
    const lift = ['intent', 'lifts', 2];
    const chain = { stages: [{ kind: 'pause', seconds: 15 }] };
    const draft = setAt(
      setAt(examples['pull-day'], [...lift, 'sets'], 2),
      [...lift, 'chain'],
      chain,
    );
    expect(
      namesOf(draft, 2).map(({ side, number, chain: own }) => [side, number, own !== undefined]),
    ).toEqual([
      ['left', 1, false],
      ['right', 1, false],
      ['left', 2, true],
      ['right', 2, true],
    ]);
  });

  it('of a lift without history has tries, and work sets whose load is still to be found', () => {
    const press = namesOf(examples['first-day'], 0);
    expect(press.map(({ kind, load }) => [kind, load !== null])).toEqual([
      ['try', true],
      ['try', false],
      ['try', false],
      ['try', false],
      ['work', false],
    ]);
  });

  it('names a lift that is left out, and has the others', () => {
    const draft = setAt(examples['pull-day'], ['intent', 'lifts', 1, 'equipment'], 'nowhere');
    const { session } = opened(draft);
    expect(session.leftOut).toHaveLength(1);
    expect(session.leftOut[0]?.reason).toMatch(/has no equipment "nowhere"/);
    expect(session.lifts).toHaveLength(2);
  });

  it('asks first, without a set, where somebody has to be asked', () => {
    const draft = setAt(
      examples['leg-day'],
      ['client', 'health', 'symptoms'],
      ['dizziness-or-fainting'],
    );
    const { session } = opened(draft);
    expect(session.steps).toEqual([]);
    expect(session.askFirst?.reasons.length).toBeGreaterThan(0);
    expect(session.askFirst?.ask).toContain('physician');
  });

  it('says what is wrong with a plan that cannot be read', () => {
    const draft = setAt(examples['pull-day'], ['intent', 'lifts', 0, 'window', 'minReps'], 'eight');
    const plan = openPlan(draft);
    expect(plan.kind === 'wrong' && plan.message).toMatch(/whole number/);
  });
});
