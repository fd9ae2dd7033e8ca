import { describe, expect, it } from 'vitest';
import gym from '../../../../examples/boathouse/gym.json';
import pullDay from '../../../../examples/boathouse/pull-day.json';
import { examples } from './examples.ts';
import { openFile } from './openFile.ts';
import { getAt } from './tree.ts';

const draft = examples['leg-day'];
const open = (file: unknown) => openFile(JSON.stringify(file), draft);

describe('openFile', () => {
  it('opens what was saved', () => {
    const opened = open(examples['first-day']);
    expect(opened).toEqual({
      kind: 'opened',
      draft: examples['first-day'],
      holds: 'plan',
      kept: [],
    });
  });

  it('keeps the gym here where a plan file only names its gym', () => {
    const opened = open(pullDay);
    expect(opened).toMatchObject({ kind: 'opened', kept: ['gym'] });
    expect(opened.kind === 'opened' && getAt(opened.draft, ['gym'])).toBe(draft.gym);
  });

  it('opens a gym file into the plan here', () => {
    const opened = open({ ...gym, name: 'Pier' });
    expect(opened).toMatchObject({ kind: 'opened', holds: 'gym' });
    expect(opened.kind === 'opened' && getAt(opened.draft, ['gym', 'name'])).toBe('Pier');
    expect(opened.kind === 'opened' && getAt(opened.draft, ['client'])).toBe(draft.client);
  });

  it.each(['', 'load,reps', '{'])('says that "%s" is no JSON', (text) => {
    expect(openFile(text, draft)).toEqual({ kind: 'not-json' });
  });

  it.each([[[]], [7], [null], [{}], [{ ...examples['leg-day'], client: 5 }]])(
    'answers %j with what would be right',
    (file) => {
      const opened = open(file);
      expect(opened.kind === 'wrong' && opened.problems[0]?.message).toMatch(/^Give /);
    },
  );
});
