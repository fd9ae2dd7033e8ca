import { describe, expect, it } from 'vitest';
import type { Station } from '../anatomy/index.ts';
import { limitsFor } from '../safety/index.ts';
import type { Area, AreaOptions, ExchangeSetting } from './Exchange.ts';
import { exercisesFor } from './exercisesFor.ts';
import { fullGym } from './fullGym.ts';

const options = (area: Area, setting: ExchangeSetting): AreaOptions => {
  const found = exercisesFor(area, setting);
  if (found.kind !== 'options') throw new Error(found.kind);
  return found;
};
const ids = (found: AreaOptions) => found.suggestions.map(({ exercise }) => exercise.id);

describe('exercisesFor', () => {
  it('names one exercise for each movement, big muscles and several joints first', () => {
    const legs = options('legs', { limits: limitsFor({}), atHand: fullGym, most: 30 });
    const movements = legs.suggestions.map(({ exercise }) => exercise.movement);
    expect(movements).toEqual([...new Set(movements)]);
    expect(legs.suggestions[0]?.exercise.span).toBe('compound');
    expect(movements.indexOf('shin-raise')).toBeGreaterThan(movements.indexOf('leg-curl'));
  });

  it('says when nothing is suitable', () => {
    const limits = limitsFor({ clinician: { by: 'physician', notAllowed: ['push-ups'] } });
    const found = exercisesFor('chest', { limits, atHand: { loads: [], stations: [] } });
    expect(found).toMatchObject({ kind: 'nothing-suitable' });
  });
});

describe('what the clinician could be asked about', () => {
  const none = { loads: [], stations: [] } as const;
  const about = (area: Area, notAllowed: readonly string[], stations: readonly Station[]) =>
    options(area, {
      limits: limitsFor({ clinician: { by: 'physician', notAllowed } }),
      atHand: { ...none, stations },
    }).askAbout;

  it('is what the list takes away, as far as it can be done here', () => {
    expect(about('legs', [], ['chair'])).toEqual([]);
    expect(about('legs', ['squats'], ['chair'])).toEqual([
      'Squat without weight',
      'Sit to stand from a chair',
    ]);
    expect(about('legs', ['squats'], [])).toEqual(['Squat without weight']);
  });

  it('is nothing that the list does not mean', () => {
    // the row under a low bar has the trunk supported by nothing but the hands, and no hinge
    expect(about('back', ['bent-over row'], ['low-bar'])).toEqual([]);
    expect(about('back', ['row'], ['low-bar'])).toHaveLength(1);
  });
});

describe('cases from practice', () => {
  describe('ease off squats for a month: two 10 kg dumbbells, a chair and the floor', () => {
    const limits = limitsFor(
      {
        complaints: [{ kind: 'knee-front', redFlags: [] }],
        clinician: {
          by: 'physiotherapist',
          notAllowed: ['squats'],
          until: '2026-04-30',
          painLimit: 2,
        },
      },
      { date: '2026-04-02' },
    );
    const legs = () =>
      options('legs', {
        limits,
        atHand: { loads: ['fixed'], stations: ['chair'] },
        most: 6,
      });

    it('puts hip work first: bridge, hinge, then calves and the side of the hip', () => {
      expect(legs().suggestions.length).toBeGreaterThanOrEqual(3);
      expect(legs().suggestions.length).toBeLessThanOrEqual(6);
      const movements = legs().suggestions.map(({ exercise }) => exercise.movement);
      expect(movements.slice(0, 2)).toEqual(['hip-thrust', 'hip-hinge']);
      expect(movements).toContain('calf-raise');
      expect(movements).toContain('hip-abduction');
    });

    it('offers no lunge or split squat; sitting to standing is for the clinician to allow', () => {
      for (const { exercise } of legs().suggestions) {
        expect(['squat', 'split-squat', 'step-up']).not.toContain(exercise.movement);
      }
      expect(legs().askAbout).toContain(
        'Sit to stand from a chair, from a raised seat, about 45 degrees',
      );
      expect(legs().askAbout.join()).not.toMatch(/split|lunge/i);
    });

    it('makes light dumbbells harder without a deeper bend, under the clinician’s pain limit', () => {
      const words = legs()
        .notes.map((note) => note.words)
        .join(' ');
      expect(words).toMatch(/one side at a time, slower lowering, a pause or more repetitions/);
      expect(words).toMatch(/limit is 2 on the pain scale of 0 to 10/);
      expect(legs().stop.length).toBeGreaterThan(0);
    });
  });

  describe('no shrugs, bent-over rows, deadlifts, squats, cleans or seated overhead work', () => {
    const notAllowed = [
      'shrug',
      'bent-over row',
      'deadlift',
      'squat',
      'power clean',
      'seated overhead press',
    ];
    const limits = limitsFor({ clinician: { by: 'physician', notAllowed } });
    const areas = ['back', 'legs', 'shoulders'] as const;
    const all = () => areas.map((area) => options(area, { limits, atHand: fullGym, most: 50 }));

    it('finds something for back, legs and shoulders', () => {
      for (const found of all()) expect(found.suggestions.length).toBeGreaterThan(0);
      expect(ids(options('legs', { limits, atHand: fullGym }))).toContain('leg-extension');
      expect(ids(options('back', { limits, atHand: fullGym }))).toContain('cable-pulldown');
    });

    it('offers nothing that loads the spine, under whatever name', () => {
      const spine = [
        'spine-upright-load',
        'spine-seated-load',
        'spine-unsupported-hinge',
        'spine-loaded-bend',
        'spine-loaded-twist',
      ] as const;
      const offered = all().flatMap((found) => found.suggestions.map(({ exercise }) => exercise));
      for (const { id, positions } of offered) {
        for (const position of spine) expect(positions, id).not.toContain(position);
      }
      const never = ['good-morning', 'kettlebell-swing', 'push-press', 'farmer-carry'];
      for (const { id } of offered) expect(never).not.toContain(id);
    });

    it('lets the list count where a description disagrees, and shows it', () => {
      const legs = all()[1];
      const belt = legs?.leftOut.find((left) => left.exercise === 'belt-squat');
      expect(belt?.reasons[0]?.code).toBe('on-clinicians-list-conflict');
    });

    it('leaves the way back to the clinician, without a date', () => {
      const words =
        all()[0]
          ?.notes.map((note) => note.words)
          .join(' ') ?? '';
      expect(words).toMatch(/needs the clinician’s word/);
      expect(words).not.toMatch(/\d{4}|week|month/);
    });
  });

  describe('a right wrist in a cast: machines, cable, dumbbells', () => {
    const limits = limitsFor({ clinician: { by: 'physician', handsOutOfUse: ['right'] } });
    const atHand = { ...fullGym, loads: ['stack', 'fixed'] } as const;
    const found = () =>
      (['legs', 'trunk', 'arms', 'back', 'shoulders', 'chest'] as const).map((area) =>
        options(area, { limits, atHand, most: 50 }),
      );

    it('never needs both hands; barbell squat and deadlift are out', () => {
      const offered = found().flatMap((area) => area.suggestions.map(({ exercise }) => exercise));
      for (const { id, hands } of offered) expect(hands, id).toBeLessThan(2);
      for (const { id } of offered) {
        expect(['barbell-back-squat', 'barbell-deadlift']).not.toContain(id);
      }
    });

    it('offers legs and trunk on machines first, the left arm only if agreed', () => {
      expect(ids(options('legs', { limits, atHand }))[0]).toBe('leg-press');
      expect(ids(options('trunk', { limits, atHand }))).toContain('machine-back-extension');
      for (const { exercise, reasonsAgainst } of found().flatMap((area) => area.suggestions)) {
        const codes = reasonsAgainst.map(({ code }) => code);
        if (exercise.hands === 1) expect(codes).toContain('one-hand-if-agreed');
      }
    });

    it('asks again at each phase, trains the other side on, names no date', () => {
      const words =
        found()[0]
          ?.notes.map((note) => note.words)
          .join(' ') ?? '';
      expect(words).toMatch(/each change of cast or splint/);
      expect(words).toMatch(/other side trains on/);
      expect(words).not.toMatch(/\d/);
    });
  });
});
