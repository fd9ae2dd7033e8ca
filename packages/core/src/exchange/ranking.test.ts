import { describe, expect, it } from 'vitest';
import type { Exercise, Variant } from '../anatomy/index.ts';
import { type ClientHealth, limitsFor } from '../safety/index.ts';
import type { ExchangeSetting } from './Exchange.ts';
import { exchangeFor } from './exchangeFor.ts';
import { exerciseWith } from './exercises.testing.ts';
import { exercisesFor } from './exercisesFor.ts';

const free = (exercises: readonly Exercise[], client: ClientHealth = {}): ExchangeSetting => ({
  limits: limitsFor(client),
  atHand: { loads: ['stack', 'barbell'], stations: [] },
  exercises,
});
const exchange = (wanted: Exercise, setting: ExchangeSetting) => {
  const found = exchangeFor(wanted, setting);
  if (found.kind !== 'options') throw new Error(found.kind);
  return found;
};
const area = (...[name, setting]: Parameters<typeof exercisesFor>) => {
  const found = exercisesFor(name, setting);
  if (found.kind !== 'options') throw new Error(found.kind);
  return found;
};
const ids = (suggestions: readonly { readonly exercise: Exercise }[]) =>
  suggestions.map(({ exercise }) => exercise.id);
const codes = (reasons: readonly { readonly code: string }[] = []) =>
  reasons.map(({ code }) => code);

// Chest 0.5, front deltoid 0.25, triceps 0.25; a horizontal press over several joints.
const wanted = exerciseWith('wanted', { positions: ['shoulder-behind-trunk', 'wrist-bent-back'] });

describe('the order of an exchange, by hand', () => {
  it('adds up the muscles in common, 0.15 for the movement and 0.05 for the joints', () => {
    const others = [
      // 0.5 + 0.25 in common
      exerciseWith('fly', {
        movement: 'chest-fly',
        span: 'isolation',
        direct: { chest: 0.5, 'front-deltoid': 0.5 },
        indirect: {},
      }),
      exerciseWith('same'),
      exerciseWith('dip', { movement: 'dip' }),
      exerciseWith('narrow', { span: 'isolation' }),
    ];
    const found = exchange(wanted, free(others));
    expect(ids(found.others)).toEqual(['same', 'narrow', 'dip', 'fly']);
    const scores = found.others.map(({ score }) => score);
    for (const [i, score] of [1.2, 1.15, 1.05, 0.75].entries()) {
      expect(scores[i]).toBeCloseTo(score, 12);
    }
  });

  it('says what is the same, what is spared and what is lost', () => {
    const fly = exerciseWith('fly', {
      movement: 'chest-fly',
      positions: ['wrist-bent-back'],
      direct: { chest: 0.6, 'upper-chest': 0.4 },
      indirect: {},
    });
    const [first] = exchange(wanted, free([fly])).others;
    expect(first?.reasonsFor).toMatchObject([
      { code: 'same-muscles', words: expect.stringContaining('50 %') },
      { code: 'without-position', words: expect.stringContaining('behind the trunk') },
    ]);
    expect(first?.reasonsAgainst).toMatchObject([
      { code: 'less-of-muscle', words: expect.stringContaining('front deltoid') },
    ]);
    const [same] = exchange(wanted, free([{ ...wanted, id: 'same' }])).others;
    expect(codes(same?.reasonsFor)).toEqual(['same-muscles', 'same-movement']);
    expect(same?.reasonsAgainst).toEqual([]);
  });

  it('takes 30 % in common and no less', () => {
    const sharing = (id: string, chest: number) =>
      exerciseWith(id, { direct: { chest, 'upper-chest': 1 - chest }, indirect: {} });
    expect(ids(exchange(wanted, free([sharing('a', 0.3), sharing('b', 0.29)])).others)).toEqual([
      'a',
    ]);
  });

  it('names of equals the first by id, five of them when nothing else is asked', () => {
    const equals = ['f', 'b', 'd', 'a', 'e', 'c'].map((id) => exerciseWith(id));
    expect(ids(exchange(wanted, free(equals)).others)).toEqual(['a', 'b', 'c', 'd', 'e']);
  });

  it('keeps an exercise that nothing speaks against, also where there is no other', () => {
    expect(exchange(wanted, free([wanted]))).toMatchObject({ against: [], setUps: [], others: [] });
  });

  it('offers set-ups where there is no other exercise', () => {
    const short: Variant = {
      ...{ id: 'short', name: 'Short', changes: 'range', effect: 'Shorter.' },
      removes: ['shoulder-behind-trunk', 'shoulder-flared-press'],
    };
    const press = { ...wanted, variants: [short] };
    const client = { complaints: [{ kind: 'shoulder-slips-or-unstable' }] } as const;
    const found = exchange(press, free([press], client));
    expect(codes(found.against)).toEqual(['position-to-avoid']);
    expect(found.setUps.map(({ setUps }) => setUps.map(({ id }) => id))).toEqual([['short']]);
    expect(found.others).toEqual([]);
  });
});

describe('what a suggestion says of its set-ups', () => {
  const variant = (id: string, rest: Partial<Variant>): Variant => ({
    ...{ id, name: id, changes: 'grip', effect: 'Other.' },
    ...rest,
  });
  const needed = variant('needed', { removes: ['shoulder-high-five'] });
  const press = exerciseWith('press', {
    positions: ['shoulder-high-five'],
    variants: [
      needed,
      variant('seat', { changes: 'seat' }),
      variant('deeper', { changes: 'range', adds: ['wrist-bent-back'] }),
      variant('bench', { changes: 'support', stations: ['flat-bench'] }),
    ],
  });
  const client = { complaints: [{ kind: 'shoulder-slips-or-unstable' }] } as const;

  it('names what else fits: not the one taken, none that adds a position, none without its place', () => {
    const [first, ...others] = exchange(wanted, free([press], client)).others;
    expect(others).toEqual([]);
    expect(first?.setUps).toEqual([needed]);
    expect(first?.alsoPossible.map(({ id }) => id)).toEqual(['seat']);
    expect(first?.exercise.variants).toEqual([]);
    expect(codes(first?.reasonsFor)).toContain('set-up');
  });

  it('is one for each exercise, however many of its set-ups fit', () => {
    const twice = { ...press, variants: [needed, { ...needed, id: 'other' }] };
    const found = exchange(wanted, free([twice], client));
    expect(found.others.map(({ setUps }) => setUps.map(({ id }) => id))).toEqual([['needed']]);
  });

  it('offers those of the exercise itself as they are listed', () => {
    const thrice = ['a', 'c', 'b'].map((id) => ({ ...needed, id }));
    const found = exchange({ ...press, variants: thrice }, free([], client));
    expect(found.setUps.map(({ setUps }) => setUps[0]?.id)).toEqual(['a', 'c', 'b']);
  });
});

describe('what is left out, by hand', () => {
  const high = { positions: ['shoulder-high-five'] } as const;
  const client = { complaints: [{ kind: 'shoulder-slips-or-unstable' }] } as const;

  it('names the nearest eight, then by id, none that fits, is far off or is only not here', () => {
    const less = { direct: { chest: 0.4, 'front-deltoid': 0.35 } } as const;
    const list = [
      exerciseWith('legs', { ...high, direct: { vasti: 0.75 } }),
      exerciseWith('fits'),
      exerciseWith('away', { ...high, loads: ['machine'] }),
      ...['i', 'c', 'a', 'h', 'b'].map((id) => exerciseWith(id, { ...high, ...less })),
      ...['g', 'd', 'f', 'e'].map((id) => exerciseWith(id, high)),
    ];
    const near = ['d', 'e', 'f', 'g', 'a', 'b', 'c', 'h'];
    const { leftOut } = exchange(wanted, free(list, client));
    expect(leftOut.map(({ exercise }) => exercise)).toEqual(near);
    for (const { reasons } of leftOut) expect(codes(reasons)).toEqual(['position-to-avoid']);
    const inArea = area('chest', free(list, client)).leftOut;
    expect(inArea.map(({ exercise }) => exercise)).toEqual(near);
  });

  it('names them too where nothing is suitable', () => {
    const found = exchangeFor(exerciseWith('b', high), free([exerciseWith('a', high)], client));
    expect(found).toMatchObject({
      kind: 'nothing-suitable',
      ask: ['physiotherapist', 'physician'],
      leftOut: [{ exercise: 'a' }],
    });
  });
});

describe('the order for an area, by hand', () => {
  it('adds up shares there, 0.6 of those of small muscles, and 0.5 for several joints', () => {
    const list = [
      exerciseWith('press'), // 0.5 of the chest, 0.5 for joints
      exerciseWith('fly', { movement: 'chest-fly', span: 'isolation', direct: { chest: 0.75 } }),
      exerciseWith('dip', { movement: 'dip' }),
    ];
    const { suggestions } = area('chest', free(list));
    expect(suggestions.map(({ exercise, score }) => [exercise.id, score])).toEqual([
      ['dip', 1],
      ['press', 1],
      ['fly', 0.75],
    ]);
    expect(suggestions[0]?.reasonsFor).toMatchObject([
      { code: 'works-the-area', words: expect.stringContaining('50 %') },
    ]);
    expect(suggestions[0]?.reasonsAgainst).toEqual([]);
    // the soleus is no main muscle of the legs
    const calves = exerciseWith('calves', { movement: 'calf-raise', direct: { soleus: 0.5 } });
    const [calf] = area('legs', free([calves])).suggestions;
    expect(calf?.score).toBeCloseTo(0.6 * 0.5 + 0.5, 12);
  });

  it('takes 40 % of the work there and no less', () => {
    const least = exerciseWith('least', { direct: { chest: 0.4, 'front-deltoid': 0.35 } });
    const under = exerciseWith('under', { movement: 'dip', direct: { chest: 0.39, lats: 0.36 } });
    expect(ids(area('chest', free([least, under])).suggestions)).toEqual(['least']);
  });

  it('names one for each movement, five when nothing else is asked', () => {
    const movements = ['dip', 'chest-fly', 'horizontal-press', 'incline-press'] as const;
    const more = ['vertical-press', 'front-raise'] as const;
    const list = [...movements, ...more].map((movement, i) =>
      exerciseWith(`e${i}`, { movement, direct: { chest: 0.75 } }),
    );
    const twice = [...list, exerciseWith('e9', { movement: 'dip', direct: { chest: 0.75 } })];
    expect(ids(area('chest', free(twice)).suggestions)).toEqual(['e0', 'e1', 'e2', 'e3', 'e4']);
    expect(area('chest', { ...free(twice), most: 9 }).suggestions).toHaveLength(6);
  });

  it('says whom to ask where nothing is suitable, and asks first where nothing may be', () => {
    expect(exercisesFor('trunk', free([wanted]))).toMatchObject({
      kind: 'nothing-suitable',
      ask: ['physiotherapist', 'physician'],
      leftOut: [],
    });
    const client = { symptoms: ['palpitations'] } as const;
    expect(exercisesFor('chest', free([wanted], client))).toMatchObject({
      kind: 'ask-first',
      reasons: [{ from: 'signs-of-disease' }],
      ask: ['physician', 'physiotherapist'],
    });
  });
});
