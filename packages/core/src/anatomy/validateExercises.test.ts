import { describe, expect, it } from 'vitest';
import type { Exercise } from './Exercise.ts';
import { validateExercises } from './validateExercises.ts';

const curl: Exercise = {
  id: 'boathouse-curl',
  name: 'Boathouse curl',
  movement: 'curl',
  loads: ['handles'],
  stations: [],
  direct: { biceps: 0.7 },
  indirect: { brachialis: 0.3 },
  actions: ['elbow-flexion'],
  positions: ['elbow-hard-grip'],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  support: 'standing',
  hands: 2,
  holds: [{ at: 'middle', momentArm: 1 }],
  wayBack: 'legs-push',
  atFailureAlone: 'leave',
  eccentricFactor: 1.25,
  endurance: 'arm-isolation',
  variants: [],
};
const codes = (...list: readonly Exercise[]) => {
  const outcome = validateExercises(list);
  return outcome.ok ? [] : outcome.problems.map((problem) => problem.code);
};
const setUp = { id: 'x', name: 'X', changes: 'grip', effect: 'Y.' } as const;

describe('validateExercises', () => {
  it('takes a good list as it is, an empty one too', () => {
    const list = [curl];
    const outcome = validateExercises(list);
    expect(outcome.ok && outcome.value).toBe(list);
    expect(validateExercises([]).ok).toBe(true);
  });

  it.each<[string, Partial<Exercise>]>([
    ['anatomy.bad-id', { id: 'Boathouse curl' }],
    ['anatomy.bad-id', { id: 'boathouse--curl' }],
    ['anatomy.bad-id', { id: 'boathouse-curl!' }],
    ['anatomy.no-load', { loads: [] }],
    ['anatomy.no-action', { actions: [] }],
    ['anatomy.body-alone', { loads: ['body', 'handles'], movedShare: { low: 1, high: 1 } }],
    ['anatomy.moved-share', { loads: ['body'] }],
    ['anatomy.moved-share', { movedShare: { low: 1, high: 1 } }],
    ['anatomy.moved-share-range', { loads: ['body'], movedShare: { low: 0.8, high: 0.6 } }],
    ['anatomy.moved-share-range', { loads: ['body'], movedShare: { low: 0, high: 0.6 } }],
    ['anatomy.moved-share-range', { loads: ['body'], movedShare: { low: 0.8, high: 1.01 } }],
    ['anatomy.fixed-forms', { fixedForms: ['kettlebell'] }],
    ['anatomy.holds', { holds: [{ at: 'middle', momentArm: 0 }] }],
    ['anatomy.holds', { holds: [{ at: 'middle', momentArm: 1.21 }] }],
    ['anatomy.hold-twice', { holds: [curl.holds[0], curl.holds[0]].flatMap((hold) => hold ?? []) }],
    ['anatomy.eccentric', { eccentricFactor: 0.9 }],
    ['anatomy.eccentric', { eccentricFactor: 2.01 }],
    ['anatomy.share-sum', { direct: { biceps: 0.8 } }],
    ['anatomy.share-range', { direct: { biceps: 1.2, brachioradialis: -0.5 } }],
    ['anatomy.share-range', { direct: { biceps: 0.7, brachioradialis: 0 } }],
    ['anatomy.share-role', { direct: { biceps: 0.5 }, indirect: { brachialis: 0.5 } }],
    ['anatomy.share-role', { direct: { biceps: 0.3 }, indirect: { brachialis: 0.7 } }],
    ['anatomy.share-twice', { indirect: { biceps: 0.3 } }],
    [
      'anatomy.share-twice',
      { direct: { biceps: 0.4, brachioradialis: 0.2 }, indirect: { biceps: 0.4 } },
    ],
    ['anatomy.variant-twice', { variants: [setUp, setUp] }],
    ['anatomy.removes', { variants: [{ ...setUp, removes: ['knee-kneeling'] }] }],
    ['anatomy.adds', { variants: [{ ...setUp, adds: ['elbow-hard-grip'] }] }],
    ['anatomy.both-shares', { variants: [{ ...setUp, direct: { biceps: 1 } }] }],
  ])('finds %s', (code, change) => {
    expect(codes({ ...curl, ...change })).toEqual([code]);
  });

  it.each<Partial<Exercise>>([
    { id: 'curl2' },
    { loads: ['body'], movedShare: { low: 1, high: 1 } },
    { holds: [{ at: 'middle', momentArm: 1.2 }] },
    { eccentricFactor: 1 },
    { eccentricFactor: 2 },
    { direct: { biceps: 1 }, indirect: {} },
    { direct: { biceps: 0.6999999 } }, // a ten-millionth is rounding
    { variants: [setUp, { ...setUp, id: 'y', adds: ['knee-kneeling'], removes: [] }] },
    { variants: [{ ...setUp, removes: ['elbow-hard-grip', 'knee-kneeling'] }] },
  ])('takes %j, at the limit', (change) => {
    expect(codes({ ...curl, ...change })).toEqual([]);
  });

  it('names a share above 1 beside the sum that it makes', () => {
    expect(codes({ ...curl, direct: { biceps: 1.2 }, indirect: {} })).toEqual([
      'anatomy.share-range',
      'anatomy.share-sum',
    ]);
  });

  it('says which set-up of which exercise', () => {
    const wrong = { ...setUp, adds: ['elbow-hard-grip'] } as const;
    const outcome = validateExercises([{ ...curl, variants: [{ ...setUp, id: 'y' }, wrong] }]);
    expect(outcome.ok ? [] : outcome.problems).toMatchObject([
      { code: 'anatomy.adds', path: [0, 'variants', 1] },
    ]);
  });

  it('says where, and what would be right', () => {
    const outcome = validateExercises([curl, curl]);
    expect(outcome.ok ? [] : outcome.problems).toEqual([
      {
        code: 'anatomy.repeated-id',
        path: [1],
        message: 'Give each exercise its own id; boathouse-curl is taken.',
      },
    ]);
  });
});
