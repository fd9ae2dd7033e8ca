import { planSession } from '@windlass/core/session';
import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { addMuscles, keepChosen, namesMuscles, removeMuscles } from './muscleEdits.ts';
import { readDraft } from './readDraft.ts';
import { getAt, type Json, listAt, setAt } from './tree.ts';

const draft = examples['pull-day'];

function planned(of: Json) {
  const read = readDraft(of);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const plan = planSession(read.value);
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan.lifts.map((lift) => (lift.kind === 'left-out' ? lift.intent : lift.lift.intent));
}

describe('muscles of a draft', () => {
  it('begin with one that no lift trains, done as the last lift is', () => {
    const before = listAt(draft, ['intent', 'lifts']).length;
    const asked = addMuscles(draft);
    expect(namesMuscles(asked)).toBe(true);
    const last = ['intent', 'lifts', before - 1];
    expect(getAt(asked, ['intent', 'muscles', 'tempo'])).toEqual(getAt(draft, [...last, 'tempo']));
    expect(planned(asked).length).toBeGreaterThan(before);
    expect(removeMuscles(asked)).toEqual(draft);
  });

  it('can be all that is asked', () => {
    const alone = setAt(addMuscles(draft), ['intent', 'lifts'], []);
    expect(planned(alone)).toHaveLength(1);
  });

  it('leave their lifts behind, planned as before', () => {
    const asked = setAt(addMuscles(draft), ['intent', 'muscles', 'muscles'], ['chest', 'glutes']);
    const lifts = planned(asked);
    const named = listAt(draft, ['intent', 'lifts']).length;
    const kept = keepChosen(asked, lifts.slice(named));
    expect(namesMuscles(kept)).toBe(false);
    expect(planned(kept).map(({ exercise }) => exercise)).toEqual(
      lifts.map(({ exercise }) => exercise),
    );
  });
});
