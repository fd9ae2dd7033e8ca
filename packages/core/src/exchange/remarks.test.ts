import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import type { ExchangeSetting } from './Exchange.ts';
import { exerciseWith } from './exercises.testing.ts';
import { fullGym } from './fullGym.ts';
import { remarks } from './remarks.ts';

const press = exerciseWith('press');
const free: ExchangeSetting = { limits: limitsFor({}), atHand: fullGym };
const said = (...args: Parameters<typeof remarks>) => {
  const { reasonsFor, reasonsAgainst, score } = remarks(...args);
  return {
    reasonsFor: reasonsFor.map(({ code }) => code),
    reasonsAgainst: reasonsAgainst.map(({ code }) => code),
    score,
  };
};
const nothing = { reasonsFor: [], reasonsAgainst: [], score: 0 };
const outOfUse = (...hands: readonly ('left' | 'right')[]): ExchangeSetting => ({
  ...free,
  limits: limitsFor({ clinician: { by: 'physician', handsOutOfUse: hands } }),
});

describe('remarks', () => {
  it('has none on a press with a stack in a full gym', () => {
    expect(said(press, [], free)).toEqual(nothing);
    expect(said(exerciseWith('cast', { hands: 1 }), [], free)).toEqual(nothing);
    expect(said(exerciseWith('bar', { atFailureAlone: 'needs-stops' }), [], free)).toEqual(nothing);
  });

  it('takes 0.1 for a position to ease that it has, and quotes the complaint', () => {
    // low-back: a hinge and load along the spine are to be eased, nothing is to be avoided
    const limits = limitsFor({ complaints: [{ kind: 'low-back' }] });
    const hinge = exerciseWith('hinge', { positions: ['spine-unsupported-hinge'] });
    expect(said(hinge, [], { ...free, limits })).toEqual({
      ...nothing,
      reasonsAgainst: ['position-to-ease'],
      score: -0.1,
    });
    expect(said(press, [], { ...free, limits })).toEqual(nothing);
    const avoided = limitsFor({ complaints: [{ kind: 'shoulder-slips-or-unstable' }] });
    const fly = exerciseWith('fly', { positions: ['shoulder-high-five'] });
    expect(said(fly, [], { ...free, limits: avoided })).toEqual(nothing);
  });

  it('takes 0.2 for one hand while the other is out of use, and says which', () => {
    const oneArm = exerciseWith('one-arm', { hands: 1 });
    expect(said(oneArm, [], outOfUse('right'))).toEqual({
      ...nothing,
      reasonsAgainst: ['one-hand-if-agreed'],
      score: -0.2,
    });
    const words = (hand: 'left' | 'right') =>
      remarks(oneArm, [], outOfUse(hand)).reasonsAgainst[0]?.words;
    expect(words('right')).toContain('the left hand');
    expect(words('left')).toContain('the right hand');
  });

  it('says what needs no hand, while one is out of use', () => {
    const legs = exerciseWith('legs', { hands: 0 });
    expect(said(legs, [], outOfUse('left'))).toEqual({ ...nothing, reasonsFor: ['no-hands'] });
    expect(said(press, [], outOfUse('left'))).toEqual(nothing);
    expect(said(legs, [], free)).toEqual(nothing);
  });

  it('says what can be left alone, and takes 0.1 for what cannot', () => {
    const alone = { ...free, alone: true };
    const bar = exerciseWith('bar', { atFailureAlone: 'needs-stops' });
    expect(said(press, [], alone)).toEqual({ ...nothing, reasonsFor: ['can-be-left'] });
    expect(said(bar, [], alone)).toEqual({
      ...nothing,
      reasonsAgainst: ['care-alone'],
      score: -0.1,
    });
    expect(said(press, [], { ...free, alone: false })).toEqual(nothing);
  });

  it('asks for stops alone to failure, for repetitions in reserve short of it', () => {
    const bar = exerciseWith('bar', { atFailureAlone: 'needs-stops' });
    const words = (toFailure?: boolean) =>
      remarks(bar, [], { ...free, alone: true, ...(toFailure !== undefined && { toFailure }) })
        .reasonsAgainst[0]?.words;
    expect(words()).toMatch(/stops/);
    expect(words(true)).toBe(words());
    expect(words(false)).toMatch(/in reserve/);
  });

  it('takes 0.05 for the own body or a band alone, nothing beside a load in steps', () => {
    const coarse = { ...nothing, reasonsAgainst: ['load-in-coarse-steps'], score: -0.05 };
    for (const loads of [['body'], ['band'], ['body', 'band']] as const) {
      expect(said(exerciseWith('light', { loads }), [], free)).toEqual(coarse);
    }
    expect(said(exerciseWith('both', { loads: ['band', 'stack'] }), [], free)).toEqual(nothing);
  });

  it('names each set-up with its effect and takes 0.1 for it', () => {
    const grip = { id: 'g', name: 'Palms facing', changes: 'grip', effect: 'Easier.' } as const;
    const seat = { ...grip, id: 's', name: 'Seat up', changes: 'seat' } as const;
    expect(said(press, [grip, seat], free)).toEqual({
      ...nothing,
      reasonsFor: ['set-up', 'set-up'],
      score: -0.2,
    });
    expect(remarks(press, [grip], free).reasonsFor[0]?.words).toBe('Palms facing. Easier.');
  });
});
