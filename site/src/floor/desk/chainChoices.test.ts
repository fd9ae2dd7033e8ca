import { loadValue } from '@windlass/core/load';
import { describe, expect, it } from 'vitest';
import gym from '../../../../examples/boathouse/gym.json' with { type: 'json' };
import pastFailureDay from '../../../../examples/boathouse/past-failure-day.json' with {
  type: 'json',
};
import { type Json, setAt } from '../../planner/state/tree.ts';
import type { FloorHappening } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { chainChoices } from './chainChoices.ts';

const help = { partner: true, stops: false };

/** The choices for the work set of the leg extension, after what happened. */
function choices(draft: Json, who = help, ...what: readonly FloorHappening[]) {
  const opened = openPlan(draft);
  if (opened.kind === 'wrong') throw new Error(opened.message);
  const { session, planned } = opened;
  const happened = [{ kind: 'gone-to', step: 1 } as const, ...what];
  const state = foldEvents(
    session,
    happened.map((one, at) => ({ ...one, at })),
  );
  return { session, choices: chainChoices(planned, session, state, who) };
}

const day: Json = { ...pastFailureDay, gym };
const chainAt = ['intent', 'lifts', 0, 'chain'];

describe('the ways past failure of a set that has one planned', () => {
  it('begin with the planned one', () => {
    const [first, ...others] = choices(day).choices;
    expect(first).toMatchObject({ kind: 'offered', isPlanned: true });
    expect(first?.stages.slice(1)).toEqual(pastFailureDay.intent.lifts[0]?.chain.stages);
    expect(others.every((one) => one.kind === 'refused' || !one.isPlanned)).toBe(true);
  });

  it('have it once where it is one of those that are always offered', () => {
    const stages = [{ kind: 'lower', secondsEach: 5, maxLowerings: 3 }];
    const offered = choices(setAt(day, chainAt, { stages })).choices;
    const same = offered.filter(
      (one) => JSON.stringify(one.stages.slice(1)) === JSON.stringify(stages),
    );
    expect(same).toMatchObject([{ kind: 'offered', isPlanned: true }]);
    expect(offered).toHaveLength(choices(day).choices.length - 1);
  });

  it('refuse it where the partner who lifts the load back is not there', () => {
    const [first] = choices(day, { partner: false, stops: false }).choices;
    expect(first?.kind).toBe('refused');
  });

  it('are with the load that was chosen on the floor', () => {
    const opened = openPlan(day);
    const lifts =
      opened.kind === 'session' && opened.planned.plan.kind === 'session'
        ? opened.planned.plan.lifts
        : [];
    const lighter = lifts[0]?.kind === 'planned' ? lifts[0].lighter?.choice : undefined;
    if (!lighter) throw new Error('the example has a lighter load');
    const [first] = choices(day, help, { kind: 'loaded', steps: [1], load: lighter }).choices;
    expect(first?.kind === 'offered' && first.plan.load).toEqual(loadValue(lighter.shown, 'kg'));
  });
});
