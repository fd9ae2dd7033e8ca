import type { Gym } from '../equipment/index.ts';
import type { LoadValue } from '../load/index.ts';
import type { Client, ClientSet } from './Client.ts';
import type { LiftIntent, SessionIntent } from './Intent.ts';

const kg = (value: number): LoadValue => ({ value, unit: 'kg' });
const lb = (value: number): LoadValue => ({ value, unit: 'lb' });

const slow = {
  lowerSeconds: 4,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 2,
  pauseAfterLiftSeconds: 0,
} as const;

/** The boathouse: a short bar with kg and lb plates, a pulldown, dumbbells, a chin-up station. */
export const gym: Gym = {
  name: 'Boathouse',
  plates: [
    { weight: kg(20), pieces: 4 },
    { weight: lb(45), pieces: 2 },
    { weight: kg(10), pieces: 4 },
    { weight: kg(5), pieces: 4 },
    { weight: kg(2.5), pieces: 4 },
    { weight: kg(1.25), pieces: 4 },
  ],
  equipment: [
    { kind: 'barbell', id: 'short-bar', name: 'Short bar', bar: kg(15) },
    {
      kind: 'stack',
      id: 'pulldown',
      name: 'Pulldown',
      first: kg(7.5),
      rest: [{ weight: kg(5), pieces: 18 }],
      addOns: [{ weight: kg(1.25), pieces: 2 }],
      pulleyRatio: 1,
    },
    {
      kind: 'fixed',
      id: 'dumbbells',
      name: 'Dumbbells',
      form: 'dumbbell',
      weights: [8, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32].map((value) => ({
        weight: kg(value),
        pieces: value === 18 ? 1 : 2,
      })),
    },
    { kind: 'body', id: 'station', name: 'Chin-up station', belt: { base: kg(1) } },
  ],
};

export const pulldownSets: readonly ClientSet[] = [
  {
    date: '2027-03-08',
    exercise: 'cable-pulldown',
    equipment: 'pulldown',
    load: kg(52.5),
    reps: 10,
    end: { kind: 'failure' },
    tempo: slow,
  },
];

export const client: Client = {
  name: 'Winch hand',
  experience: 'some',
  bodyWeight: kg(78),
  alone: true,
  health: {
    ageYears: 41,
    symptoms: [],
    conditions: [],
    activity: 'active',
    bloodPressure: { status: 'not-raised' },
  },
  sets: pulldownSets,
};

export const pulldown: LiftIntent = {
  exercise: 'cable-pulldown',
  equipment: 'pulldown',
  window: { minReps: 8, maxReps: 11 },
  tempo: slow,
  sets: 2,
  restSeconds: 150,
};

export function intentOf(...lifts: readonly LiftIntent[]): SessionIntent {
  return { date: '2027-03-15', unit: 'kg', changeSeconds: 120, lifts };
}
