import { planSession } from '@windlass/core/session';
import { describe, expect, it } from 'vitest';
import { exampleIds, examples } from './examples.ts';
import { readDraft } from './readDraft.ts';

describe.each(exampleIds)('the example %s', (id) => {
  it('can be planned from, with every lift done', () => {
    const read = readDraft(examples[id]);
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    const plan = planSession(read.value);
    expect(plan.kind).toBe('session');
    if (plan.kind !== 'session') return;
    const expected = id === 'first-day' ? 'finding' : 'planned';
    expect(plan.lifts.map(({ kind }) => kind)).toEqual(plan.lifts.map(() => expected));
  });
});
