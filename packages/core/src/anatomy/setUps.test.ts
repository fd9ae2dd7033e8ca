import { describe, expect, it } from 'vitest';
import { applyVariant } from './applyVariant.ts';
import { canLoad } from './canLoad.ts';
import type { Exercise } from './Exercise.ts';
import { exercises } from './exercises.ts';
import { hasStations } from './hasStations.ts';
import { jointsLoaded } from './jointsLoaded.ts';
import { sharesOf } from './sharesOf.ts';

const named = (id: string): Exercise => {
  const exercise = exercises.find((candidate) => candidate.id === id);
  if (!exercise) throw new Error(`no exercise ${id}`);
  return exercise;
};
const variantOf = (exercise: Exercise, id: string) => {
  const variant = exercise.variants.find((candidate) => candidate.id === id);
  if (!variant) throw new Error(`no variant ${id}`);
  return variant;
};

describe('applyVariant', () => {
  it('takes positions away and brings others in', () => {
    const pulldown = named('cable-pulldown');
    const palmsUp = applyVariant(pulldown, variantOf(pulldown, 'palms-up'));
    expect(palmsUp.positions).toEqual(['shoulder-overhead', 'elbow-hard-grip']);
    const behind = applyVariant(pulldown, variantOf(pulldown, 'behind-neck'));
    expect(behind.positions).toContain('shoulder-high-five');
  });

  it('moves hands, support, way back and what must be there', () => {
    const row = named('one-arm-dumbbell-row');
    const incline = applyVariant(row, variantOf(row, 'chest-on-incline'));
    expect(incline).toMatchObject({
      id: row.id,
      hands: 1,
      support: 'chest-supported',
      wayBack: 'other-limb',
      stations: ['flat-bench', 'incline-bench'],
      variants: [],
    });
    expect(row.hands).toBe(2);
  });

  it('leaves what it does not name as it is', () => {
    const plain = { id: 'x', name: 'X', changes: 'grip', effect: 'Y.' } as const;
    for (const exercise of exercises) {
      expect(applyVariant(exercise, plain)).toEqual({ ...exercise, variants: [] });
    }
  });

  it('carries less of the body with raised hands, and asks for the bench once', () => {
    const pushUp = named('push-up');
    const raised = variantOf(pushUp, 'hands-raised');
    const once = applyVariant(pushUp, raised);
    expect(once).toMatchObject({ movedShare: { low: 0.41, high: 0.55 }, stations: ['flat-bench'] });
    expect(applyVariant(once, raised).stations).toEqual(['flat-bench']);
  });

  it('keeps shares that add up to 1, in every set-up of every exercise', () => {
    for (const exercise of exercises) {
      for (const variant of exercise.variants) {
        const changed = applyVariant(exercise, variant);
        const total = Object.values(sharesOf(changed)).reduce((sum, share) => sum + share, 0);
        expect(total).toBeCloseTo(1, 9); // rounding of a dozen doubles
        expect(sharesOf(changed)).toEqual(sharesOf(exercise, variant));
      }
    }
  });
});

describe('canLoad', () => {
  const kettlebells = {
    kind: 'fixed',
    form: 'kettlebell',
    id: 'k',
    name: 'K',
    weights: [],
  } as const;
  const dumbbells = { kind: 'fixed', form: 'dumbbell', id: 'd', name: 'D', weights: [] } as const;

  it('tells dumbbells from kettlebells and bars in one piece', () => {
    expect(canLoad(named('dumbbell-curl'), dumbbells)).toBe(true);
    expect(canLoad(named('dumbbell-curl'), kettlebells)).toBe(false);
    expect(canLoad(named('kettlebell-swing'), kettlebells)).toBe(true);
    expect(canLoad(named('goblet-squat'), kettlebells)).toBe(true);
  });

  it('goes by the kind otherwise', () => {
    const station = { kind: 'body', id: 's', name: 'Bar' } as const;
    expect(canLoad(named('chin-up'), station)).toBe(true);
    expect(canLoad(named('leg-press'), station)).toBe(false);
  });
});

describe('hasStations', () => {
  it('needs all of them, and nothing is always there', () => {
    expect(hasStations([], [])).toBe(true);
    expect(hasStations(['flat-bench'], ['flat-bench', 'rack'])).toBe(false);
  });

  it('lets a cable column stand in for pulley and low row, not the other way round', () => {
    expect(hasStations(['cable'], ['high-pulley', 'seated-cable-row'])).toBe(true);
    expect(hasStations(['high-pulley'], ['cable'])).toBe(false);
    expect(hasStations(['flat-bench', 'cable'], ['high-pulley'])).toBe(true);
  });
});

describe('jointsLoaded', () => {
  it('names what moves against the load and what carries it', () => {
    expect(jointsLoaded(named('leg-extension'))).toEqual(['knee']);
    expect(jointsLoaded(named('barbell-back-squat'))).toEqual([
      'shoulder',
      'wrist',
      'spine',
      'hip',
      'knee',
      'ankle',
    ]);
    expect(jointsLoaded(named('cable-pushdown'))).toEqual(['elbow', 'wrist']);
  });

  it('counts fingers as the wrist, and a loaded hand too', () => {
    const bare = { ...named('leg-extension'), positions: [], hands: 0 } as const;
    expect(jointsLoaded({ ...bare, actions: ['finger-flexion'] })).toEqual(['wrist']);
    expect(jointsLoaded({ ...bare, hands: 1 })).toEqual(['wrist', 'knee']);
  });

  it('names at least one joint for every exercise', () => {
    for (const exercise of exercises)
      expect(jointsLoaded(exercise).length, exercise.id).toBeGreaterThan(0);
  });
});
