import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent, LiftOverrules } from './Intent.ts';
import { liftOf } from './liftOf.ts';
import { settleLift } from './settleLift.ts';

const context = { intensity: 'vigorous', alone: true, date: '2027-03-15' } as const;
const limits = limitsFor(client.health, context);
const sore = limitsFor(
  {
    ...client.health,
    complaints: [{ kind: 'elbow-outer', redFlags: [] }],
    clinician: { by: 'physiotherapist', agreesToTraining: true },
  },
  context,
);

function settle(overrules: LiftOverrules, change: Partial<LiftIntent> = {}) {
  const settled = settleLift({ ...pulldown, ...change, overrules }, gym, client, limits);
  if (settled.kind !== 'settled') throw new Error(settled.message);
  const { lift, overruled, refused } = settled;
  return { intent: lift.intent, overruled, refused: refused.map(({ what, code }) => [what, code]) };
}

describe('settleLift', () => {
  it.each([
    [{ sets: 1 }, { sets: 1 }, { sets: { chosen: 2 } }],
    [{ sets: 10 }, { sets: 10 }, { sets: { chosen: 2 } }],
    [{ restSeconds: 0 }, { restSeconds: 0 }, { restSeconds: { chosen: 150 } }],
    [{ restSeconds: 1800 }, { restSeconds: 1800 }, { restSeconds: { chosen: 150 } }],
    [{ sets: 2, restSeconds: 150 }, { sets: 2, restSeconds: 150 }, {}],
    [{}, { sets: 2, restSeconds: 150 }, {}],
  ])('takes %j and marks what differs', (overrules, intent, overruled) => {
    expect(settle(overrules)).toMatchObject({ intent, refused: [] });
    expect(settle(overrules).overruled).toEqual(overruled);
  });

  it.each([
    [{ sets: 11 }, 'sets', 'session.sets-out-of-range'],
    [{ sets: 1.5 }, 'sets', 'session.sets-out-of-range'],
    [{ restSeconds: 1801 }, 'rest', 'session.rest-out-of-range'],
    [{ restSeconds: 0.5 }, 'rest', 'session.rest-out-of-range'],
    [{ restSeconds: -1 }, 'rest', 'session.rest-out-of-range'],
  ])('refuses %j', (overrules, what, code) => {
    const { intent, overruled, refused } = settle(overrules);
    expect(refused).toEqual([[what, code]]);
    expect(overruled).toEqual({});
    expect(intent).toMatchObject({ sets: 2, restSeconds: 150 });
  });

  it('refuses each wish by itself', () => {
    const { refused, overruled } = settle({ sets: 0, restSeconds: 60, variant: 'upside-down' });
    expect(refused).toEqual([
      ['variant', 'session.variant-not-open'],
      ['sets', 'session.sets-out-of-range'],
    ]);
    expect(overruled).toEqual({ restSeconds: { chosen: 150 } });
  });

  it('takes another set-up, the usual one as well, and marks the one that was wanted', () => {
    const grip = 'neutral-grip';
    const changed = settle({ variant: grip, sets: 3 });
    expect(changed.intent).toMatchObject({ variant: grip, sets: 3 });
    expect(changed.overruled).toEqual({ variant: { chosen: 'usual' }, sets: { chosen: 2 } });
    const back = settle({ variant: 'usual', sets: 0 }, { variant: grip });
    expect(back.intent).not.toHaveProperty('variant');
    expect(back.overruled).toEqual({ variant: { chosen: grip } });
    expect(back.refused).toEqual([['sets', 'session.sets-out-of-range']]);
    expect(settle({ variant: grip }, { variant: grip }).overruled).toEqual({});
    expect(settle({ variant: 'usual' }).overruled).toEqual({});
  });

  it('leaves out what cannot be done, as it was wanted', () => {
    const wanted = { ...pulldown, equipment: 'nowhere', overrules: { sets: 3 } };
    expect(settleLift(wanted, gym, client, limits)).toMatchObject({
      kind: 'unsettled',
      reason: 'unknown-equipment',
      intent: wanted,
    });
    const hurts = settleLift(pulldown, gym, client, sore);
    expect(hurts).toMatchObject({ kind: 'unsettled', reason: 'limits', intent: pulldown });
    // every set-up that is left open is named, the others are not
    const open = hurts.kind === 'unsettled' ? hurts.message : '';
    expect(open).toMatch(/These set-ups are left open: "[a-z-]+" \([a-z]/);
    expect(open).not.toContain('the usual one');
    const named = [...open.matchAll(/"([a-z-]+)"/g)].map(([, id]) => id ?? '');
    for (const id of named) {
      expect(settleLift({ ...pulldown, variant: id }, gym, client, sore).kind).toBe('settled');
    }
    expect(named).toContain('neutral-grip');
    expect(open).toMatch(/"[a-z-]+" \([^)]+\), "/);
  });

  it('names the usual set-up where another one is not open', () => {
    const clinician = { by: 'physician', notAllowed: ['barbell bench press'] } as const;
    const listed = limitsFor({ ...client.health, clinician }, context);
    const bench = { ...pulldown, exercise: 'barbell-bench-press', equipment: 'short-bar' };
    const found = settleLift(bench, gym, client, listed);
    expect(found.kind === 'unsettled' && found.message).toMatch(/No set-up of Barbell bench press/);
  });
});

describe('liftOf', () => {
  const why = (change: Partial<LiftIntent>, bodyWeight = client.bodyWeight) => {
    const found = liftOf({ ...pulldown, ...change }, gym, bodyWeight);
    return found.kind === 'no-lift' ? [found.reason, found.message] : ['lift'];
  };

  it('says what there is instead of what is not', () => {
    expect(why({ exercise: 'cable-puldown' })[1]).toMatch(/Near it: cable-pulldown(, [a-z-]+)*\.$/);
    const [, setUps] = why({ variant: 'upside-down' });
    expect(setUps).toMatch(/It has: [a-z-]+(, [a-z-]+)+\.$/);
    const bare = why({ exercise: 'dumbbell-floor-press', equipment: 'dumbbells', variant: 'x' });
    expect(bare[1]).toMatch(/It has: (none|[a-z-]+(, [a-z-]+)*)\.$/);
    expect(why({ equipment: 'nowhere' })[1]).toMatch(
      /It has: short-bar, pulldown, dumbbells, station\.$/,
    );
    expect(why({ exercise: 'machine-row', equipment: 'dumbbells' })[1]).toMatch(
      /It takes: stack, machine\.$/,
    );
  });

  it('tells a hold from repetitions, and the lack of a load from both', () => {
    const plank = why({ exercise: 'plank', equipment: 'station' });
    expect(plank[0]).toBe('no-repetitions');
    expect(why({ exercise: 'chin-up', equipment: 'station' })).toEqual(['lift']);
    const found = liftOf(
      { ...pulldown, exercise: 'chin-up', equipment: 'station' },
      gym,
      undefined,
    );
    expect(found).toMatchObject({ kind: 'no-lift', reason: 'no-loads' });
  });

  it('is done as the exercise is: one hand or two, all of the body or a part', () => {
    const use = (exercise: string, equipment: string) => {
      const found = liftOf({ ...pulldown, exercise, equipment }, gym, client.bodyWeight);
      return found.kind === 'lift' ? found.use : undefined;
    };
    expect(use('one-arm-dumbbell-row', 'dumbbells')).toMatchObject({ hands: 1 });
    expect(use('dumbbell-curl', 'dumbbells')).toMatchObject({ hands: 2, plates: gym.plates });
    expect(use('inverted-row', 'station')?.movedShare).toBeDefined();
    expect(use('cable-pulldown', 'pulldown')).not.toHaveProperty('movedShare');
  });

  it('has the set-up applied to the exercise', () => {
    const found = liftOf({ ...pulldown, variant: 'neutral-grip' }, gym, client.bodyWeight);
    if (found.kind !== 'lift') throw new Error(found.message);
    expect(found.variant?.id).toBe('neutral-grip');
    const usual = liftOf(pulldown, gym, client.bodyWeight);
    expect(usual).not.toHaveProperty('variant');
    expect(usual.kind === 'lift' && usual.exercise.positions).not.toEqual(found.exercise.positions);
  });
});
