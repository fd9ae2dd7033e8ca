import { describe, expect, it } from 'vitest';
import type { Exercise, PositionId, Variant } from '../anatomy/index.ts';
import { exerciseWith } from './exercises.testing.ts';
import { setUpsWithin } from './setUpsWithin.ts';

const variant = (
  id: string,
  changes: Variant['changes'],
  removes: readonly PositionId[],
): Variant => ({ id, name: id, changes, effect: 'Other.', removes });
const narrow = variant('narrow', 'grip', ['elbow-hard-grip']);
const facing = variant('facing', 'grip', ['wrist-bent-back']);
const short = variant('short', 'range', ['shoulder-behind-trunk']);
const press = exerciseWith('press', {
  positions: ['elbow-hard-grip', 'wrist-bent-back', 'shoulder-behind-trunk'],
  variants: [narrow, facing, short],
});
/** The ids of the set-ups that leave none of these positions. */
const ways = (...banned: readonly PositionId[]) => {
  const against = (exercise: Exercise) =>
    exercise.positions
      .filter((position) => banned.includes(position))
      .map((code) => ({ code, words: code }));
  return setUpsWithin(press, against).map(({ setUps }) => setUps.map(({ id }) => id));
};

describe('setUpsWithin', () => {
  it('leaves an exercise as it is where nothing speaks against it', () => {
    expect(ways()).toEqual([[]]);
  });

  it('takes every single set-up that is enough, and no second one beside it', () => {
    expect(ways('shoulder-behind-trunk')).toEqual([['short']]);
    expect(ways('elbow-hard-grip')).toEqual([['narrow']]);
  });

  it('takes two that change different things, once, where one is not enough', () => {
    expect(ways('elbow-hard-grip', 'shoulder-behind-trunk')).toEqual([['narrow', 'short']]);
  });

  it('takes no two grips at once, and no three set-ups', () => {
    expect(ways('elbow-hard-grip', 'wrist-bent-back')).toEqual([]);
    expect(ways('elbow-hard-grip', 'wrist-bent-back', 'shoulder-behind-trunk')).toEqual([]);
  });

  it('hands back the exercise as it is then set up', () => {
    const [way] = setUpsWithin(press, ({ positions }) =>
      positions.includes('wrist-bent-back') ? [{ code: 'x', words: 'X.' }] : [],
    );
    expect(way?.exercise.positions).toEqual(['elbow-hard-grip', 'shoulder-behind-trunk']);
    expect(way?.exercise.variants).toEqual(press.variants);
  });
});
