import { describe, expect, it } from 'vitest';
import { atHandFrom } from './atHandFrom.ts';
import { fullGym } from './fullGym.ts';

describe('atHandFrom', () => {
  it('names each kind of load once, with the forms of one-piece weights', () => {
    const weight = { value: 8, unit: 'kg' } as const;
    const gym = {
      name: 'Boathouse',
      plates: [],
      equipment: [
        { kind: 'barbell', id: 'long', name: 'Long bar', bar: { value: 20, unit: 'kg' } },
        { kind: 'barbell', id: 'short', name: 'Short bar', bar: { value: 15, unit: 'kg' } },
        {
          kind: 'fixed',
          form: 'dumbbell',
          id: 'd',
          name: 'Dumbbells',
          weights: [{ weight, pieces: 2 }],
        },
      ],
    } as const;
    expect(atHandFrom(gym, ['flat-bench'])).toEqual({
      loads: ['barbell', 'fixed'],
      fixedForms: ['dumbbell'],
      stations: ['flat-bench'],
    });
  });
});

describe('fullGym', () => {
  it('has every station, those of set-ups too', () => {
    expect(fullGym.stations).toContain('leg-press-machine');
    expect(fullGym.stations).toContain('step');
    expect(fullGym.loads).toContain('band');
  });
});
