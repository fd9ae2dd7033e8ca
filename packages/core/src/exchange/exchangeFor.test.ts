import { describe, expect, it } from 'vitest';
import { type Exercise, findExercise } from '../anatomy/index.ts';
import { type ClientHealth, limitsFor } from '../safety/index.ts';
import type { AtHand } from './AtHand.ts';
import type { ExchangeOptions, ExchangeSetting } from './Exchange.ts';
import { exchangeFor } from './exchangeFor.ts';
import { fullGym } from './fullGym.ts';

const named = (id: string): Exercise => {
  const found = findExercise(id);
  if (found.kind === 'unknown') throw new Error(`no exercise ${id}`);
  return found.exercise;
};
const options = (id: string, setting: ExchangeSetting): ExchangeOptions => {
  const exchange = exchangeFor(named(id), setting);
  if (exchange.kind !== 'options') throw new Error(exchange.kind);
  return exchange;
};
const ids = (exchange: ExchangeOptions) => exchange.others.map(({ exercise }) => exercise.id);
const limits = (client: ClientHealth) => limitsFor(client);
const boathouse: AtHand = {
  loads: ['barbell', 'fixed', 'stack', 'body'],
  stations: ['cable', 'chin-up-bar', 'dip-bars', 'flat-bench', 'leg-press-machine'],
};

describe('exchangeFor', () => {
  it('leaves an exercise that nothing speaks against where it is, and names its neighbours', () => {
    const exchange = options('cable-row', { limits: limits({}), atHand: boathouse });
    expect(exchange.against).toEqual([]);
    expect(exchange.setUps).toEqual([]);
    expect(ids(exchange)[0]).toBe('one-arm-cable-row');
    expect(exchange.notes).toEqual([]);
  });

  it('goes by what is at hand: no pulldown, then the chin-up bar', () => {
    const atHand: AtHand = { loads: ['body'], stations: ['chin-up-bar'] };
    const exchange = options('cable-pulldown', { limits: limits({}), atHand });
    expect(exchange.against.map(({ code }) => code)).toEqual(['no-load-here', 'no-station-here']);
    expect(exchange.setUps).toEqual([]);
    expect(ids(exchange)).toEqual(['chin-up']);
  });

  it('takes any stack or bar whatever the one-piece weights are, and those only as they are', () => {
    const against = (id: string, atHand: AtHand) =>
      options(id, { limits: limits({}), atHand }).against.map(({ code }) => code);
    const fixed = { loads: ['fixed'], stations: ['flat-bench'] } as const;
    const kettlebells = { ...fixed, fixedForms: ['kettlebell'] } as const;
    const stack = {
      loads: ['stack'],
      fixedForms: [],
      stations: ['seated-leg-curl-machine'],
    } as const;
    expect(against('dumbbell-bench-press', fixed)).toEqual([]);
    expect(against('dumbbell-bench-press', kettlebells)).toEqual(['no-load-here']);
    expect(against('goblet-squat', kettlebells)).toEqual([]);
    expect(against('seated-leg-curl', stack)).toEqual([]);
  });

  it('counts the own body and the floor as always there', () => {
    const nothing: AtHand = { loads: [], stations: [] };
    const exchange = options('machine-chest-press', { limits: limits({}), atHand: nothing });
    expect(ids(exchange)).toEqual(['push-up']);
    expect(exchange.others[0]?.reasonsAgainst).toMatchObject([{ code: 'load-in-coarse-steps' }]);
  });

  it('says when nothing is suitable, and whom to ask', () => {
    const atHand: AtHand = { loads: ['stack'], stations: ['curl-machine'] };
    const setting = {
      limits: limits({ clinician: { by: 'physician', notAllowed: ['curls'] } }),
      atHand,
    };
    const exchange = exchangeFor(named('machine-curl'), setting);
    expect(exchange).toMatchObject({
      kind: 'nothing-suitable',
      ask: ['physiotherapist', 'physician'],
    });
  });

  it('asks first when no training is agreed yet', () => {
    const setting = { limits: limits({ symptoms: ['chest-discomfort'] }), atHand: boathouse };
    expect(exchangeFor(named('dip'), setting)).toMatchObject({
      kind: 'ask-first',
      reasons: [{ from: 'signs-of-disease' }],
      ask: ['physician', 'physiotherapist'],
    });
  });

  it('asks first about a joint that is paused, and exchanges what does not load it', () => {
    const complaints = [{ kind: 'elbow-outer', redFlags: ['weakness'] }] as const;
    const setting = { limits: limits({ complaints }), atHand: fullGym };
    expect(exchangeFor(named('dip'), setting)).toMatchObject({
      kind: 'ask-first',
      reasons: [{ from: 'new-weakness' }],
    });
    expect(exchangeFor(named('leg-extension'), setting).kind).toBe('options');
  });

  it('asks what an unknown word on a clinician’s list covers, instead of passing over it', () => {
    const clinician = { by: 'physician', notAllowed: ['squat', 'wall ball toss'] } as const;
    const exchange = exchangeFor(named('dip'), {
      limits: limits({ clinician }),
      atHand: boathouse,
    });
    expect(exchange).toMatchObject({
      kind: 'ask-first',
      reasons: [{ from: 'clinician', words: expect.stringContaining('"wall ball toss"') }],
    });
  });

  it('looks in the list it is given', () => {
    const own = { ...named('cable-row'), id: 'boathouse-oar-row', name: 'Oar row' };
    const setting = { limits: limits({}), atHand: boathouse, exercises: [own] };
    expect(ids(options('cable-row', setting))).toEqual(['boathouse-oar-row']);
  });

  it('keeps the list as short as asked', () => {
    const setting = { limits: limits({}), atHand: fullGym, most: 2 };
    expect(ids(options('barbell-back-squat', setting))).toHaveLength(2);
  });

  it('offers set-ups of the exercise also when it comes with one already', () => {
    const extension = named('leg-extension');
    const oneLeg = { ...extension, variants: [] };
    const setting = {
      limits: limits({ complaints: [{ kind: 'knee-front', redFlags: [] }] }),
      atHand: fullGym,
    };
    const exchange = exchangeFor(oneLeg, setting);
    const setUps = exchange.kind === 'options' ? exchange.setUps : [];
    expect(setUps[0]?.setUps.map(({ id }) => id)).toEqual(['bent-half']);
  });
});

describe('cases from practice', () => {
  describe('front-of-shoulder pain at the bottom of the bench press: dumbbells, bench, floor, cable', () => {
    const setting = {
      limits: limits({ complaints: [{ kind: 'shoulder-front-bottom-of-press', redFlags: [] }] }),
      atHand: { loads: ['fixed', 'stack'], stations: ['flat-bench', 'cable'] } as const,
    };
    const exchange = () => options('barbell-bench-press', setting);

    it('keeps the chest working with two to five exercises, the floor press among them', () => {
      expect(exchange().others.length).toBeGreaterThanOrEqual(2);
      expect(exchange().others.length).toBeLessThanOrEqual(5);
      expect(ids(exchange())).toContain('dumbbell-floor-press');
      expect(ids(exchange())).toContain('dumbbell-bench-press');
      expect(ids(exchange())).toContain('cable-chest-press');
      for (const { exercise } of exchange().others) expect(exercise.direct).toHaveProperty('chest');
    });

    it('shortens the bottom or lets the arms turn in every one, and offers no dip or deep fly', () => {
      const everywhere = options('barbell-bench-press', { ...setting, atHand: fullGym, most: 50 });
      for (const { exercise } of [...exchange().others, ...everywhere.others]) {
        expect(exercise.positions).not.toContain('shoulder-behind-trunk');
        expect(exercise.positions).not.toContain('shoulder-flared-press');
        expect(exercise.movement).not.toBe('dip');
      }
      expect(everywhere.leftOut.map((left) => left.exercise)).toContain('dip');
    });

    it('offers the press itself to a stop above the painful point, where there is a barbell', () => {
      const withBar = options('barbell-bench-press', { ...setting, atHand: fullGym });
      expect(withBar.setUps[0]?.setUps.map(({ id }) => id)).toEqual(['elbows-in', 'to-stop']);
    });

    it('starts lighter and names pain as what ends it', () => {
      expect(exchange().notes.map(({ code }) => code)).toEqual([
        'start-lighter',
        'harder-without-depth',
      ]);
      expect(new Set(exchange().stop.map(({ id }) => id))).toEqual(
        new Set([
          'numbness-or-weakness',
          'sharp-or-radiating-pain',
          'pop-or-sudden-loss',
          'rising-pain',
        ]),
      );
    });
  });

  describe('aching elbows on lying extensions', () => {
    const atHand = { loads: ['stack', 'fixed'], stations: ['cable', 'flat-bench'] } as const;

    it('with tingling fingers: the referral, and no list', () => {
      const setting = {
        limits: limits({
          complaints: [{ kind: 'elbow-back-or-inner', redFlags: ['numbness-or-tingling'] }],
        }),
        atHand,
      };
      const exchange = exchangeFor(named('lying-dumbbell-triceps-extension'), setting);
      expect(exchange).toMatchObject({
        kind: 'ask-first',
        reasons: [{ from: 'numbness-or-tingling' }],
      });
      expect(exchange).not.toHaveProperty('others');
    });

    it('without it: pushdown, with a rope too, and the close press; no deep bend', () => {
      const setting = {
        limits: limits({ complaints: [{ kind: 'elbow-back-or-inner', redFlags: [] }] }),
        atHand,
      };
      const exchange = options('lying-dumbbell-triceps-extension', setting);
      expect(ids(exchange)).toContain('cable-pushdown');
      expect(ids(exchange)).toContain('close-dumbbell-press');
      const pushdown = exchange.others.find(({ exercise }) => exercise.id === 'cable-pushdown');
      expect(pushdown?.alsoPossible.map(({ id }) => id)).toContain('rope');
      for (const { exercise } of exchange.others) {
        expect(exercise.positions).not.toContain('elbow-deep-bend');
      }
    });
  });

  it('an elbow tendon complaint at the boathouse: the pulldown stays, with palms facing', () => {
    const setting = {
      limits: limits({ complaints: [{ kind: 'elbow-outer', redFlags: [] }] }),
      atHand: boathouse,
    };
    const exchange = options('cable-pulldown', setting);
    expect(exchange.setUps[0]?.setUps.map(({ id }) => id)).toEqual(['neutral-grip']);
    expect(ids(exchange)).toContain('chin-up');
    expect(exchange.setUps[0]?.reasonsAgainst).toMatchObject([{ code: 'position-to-ease' }]);
  });

  describe('a bench press to failure, alone and without stops', () => {
    const setting = { limits: limits({}), atHand: fullGym, alone: true };

    it('is not offered; what can be left at any point is', () => {
      const exchange = options('barbell-bench-press', setting);
      expect(exchange.against).toMatchObject([{ code: 'not-alone-to-failure' }]);
      expect(exchange.setUps).toEqual([]);
      expect(ids(exchange)).toContain('dumbbell-bench-press');
      expect(ids(exchange)).toContain('machine-chest-press');
      expect(ids(exchange)).toContain('push-up');
      for (const { exercise } of exchange.others) expect(exercise.atFailureAlone).toBe('leave');
    });

    it('needs a partner where stops are no help, and says which of the two', () => {
      const against = (id: string, stops: boolean) =>
        options(id, { ...setting, stops }).against.map(({ words }) => words);
      expect(against('barbell-bench-press', false)).toEqual([expect.stringContaining('stops')]);
      for (const stops of [false, true]) {
        expect(against('lying-triceps-extension', stops)).toEqual([
          expect.stringContaining('partner'),
        ]);
      }
    });

    it('stays with stops that were tried, or with repetitions in reserve', () => {
      expect(options('barbell-bench-press', { ...setting, stops: true }).against).toEqual([]);
      const short = options('barbell-bench-press', { ...setting, toFailure: false });
      expect(short.against).toEqual([]);
      const guided = short.others.find(({ exercise }) => exercise.id === 'guided-bar-bench-press');
      expect(guided?.reasonsAgainst.map(({ code }) => code) ?? ['care-alone']).toEqual([
        'care-alone',
      ]);
    });
  });

  it('easing off squats: the squat family is out, hinge and bridge come instead', () => {
    const clinician = {
      by: 'physiotherapist',
      notAllowed: ['squats'],
      until: '2026-04-30',
    } as const;
    const complaints = [{ kind: 'knee-front', redFlags: [] }] as const;
    const atHand = { loads: ['fixed'], stations: ['chair'] } as const;
    const during = options('goblet-squat', {
      limits: limitsFor({ clinician, complaints }, { date: '2026-04-30' }),
      atHand,
    });
    expect(ids(during)).toContain('dumbbell-romanian-deadlift');
    expect(ids(during)).toContain('dumbbell-glute-bridge');
    for (const { exercise } of during.others) {
      expect(['squat', 'split-squat', 'step-up']).not.toContain(exercise.movement);
    }
  });
});
