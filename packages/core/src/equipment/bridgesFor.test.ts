import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { bridgesFor } from './bridgesFor.ts';
import type { Equipment } from './Equipment.ts';

const ids = (kind: Equipment['kind']) => bridgesFor(kind, kg(40)).map(({ id }) => id);
const always = ['more-repetitions', 'slower-lowering', 'pause'];

describe('bridgesFor', () => {
  it.each([
    ['barbell', ['small-plates']],
    ['one-post', ['small-plates']],
    ['fixed', ['one-side', 'add-on', 'other-ratio']],
    ['handles', ['small-plates', 'one-side']],
    ['stack', ['add-on', 'one-side']],
    ['machine', ['small-plates', 'one-side']],
    ['body', ['add-on']],
    ['band', []],
  ] as const)('%s: what is always there, then %j', (kind, also) => {
    expect(ids(kind)).toEqual([...always, ...also]);
  });

  it('lets pieces to get add a tenth of the load at most, and says nothing of the sort elsewhere', () => {
    const adds = [...bridgesFor('fixed', kg(40)), ...bridgesFor('barbell', kg(40))].flatMap(
      ({ id, addsAtMost }) => (addsAtMost === undefined ? [] : [[id, addsAtMost]]),
    );
    expect(adds).toEqual([
      ['add-on', kg(4)],
      ['small-plates', kg(4)],
    ]);
  });
});
