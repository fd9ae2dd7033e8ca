import type { Source } from '../basis/index.ts';
import type { OneRepMaxEquation } from './OneRepMaxEquation.ts';

const reynolds: Source = {
  id: 'reynolds-2006',
  citation: 'Reynolds JM, Gordon TJ, Robergs RA. J Strength Cond Res 2006;20(3):584-592',
  doi: '10.1519/R-15304.1',
  standing: 'verified',
};

const braith: Source = {
  id: 'braith-1993',
  citation: 'Braith RW, Graves JE, Leggett SH, Pollock ML. Med Sci Sports Exerc 1993;25(1):132-138',
  doi: '10.1249/00005768-199301000-00018',
  standing: 'verified',
};

const powerlifters: Source = {
  id: 'high-school-powerlifters-2003',
  citation:
    'Prediction of 1 repetition maximum in high-school power lifters. J Strength Cond Res 2003;17(1):167-172',
  doi: '10.1519/1533-4287(2003)017<0167:pormih>2.0.co;2',
  standing: 'verified',
};

const adults = '70 adults of 18 to 69 years';
const lifters = '18 elite male high-school powerlifters';

/** Equations for one lift; those with a constant in kg hold only for loads like their sample's. */
export const liftEquations: readonly OneRepMaxEquation[] = [
  {
    id: 'reynolds-chest-5rm',
    name: 'Reynolds et al. 2006, 5RM bench press',
    formula: '1.1307 * w + 0.6999',
    source: reynolds,
    madeFrom: `${adults}, barbell bench press`,
    lift: 'bench-press',
    validReps: [5, 5],
    knownError: 'standard error of estimate 2.98 kg, R2 0.993',
    oneRepMaxKg: (w) => 1.1307 * w + 0.6999,
  },
  {
    id: 'reynolds-leg-5rm',
    name: 'Reynolds et al. 2006, 5RM leg press',
    formula: '1.0970 * w + 14.2546',
    source: reynolds,
    madeFrom: `${adults}, plate-loaded leg press`,
    lift: 'leg-press',
    validReps: [5, 5],
    knownError: 'standard error of estimate 16.16 kg, R2 0.974',
    oneRepMaxKg: (w) => 1.097 * w + 14.2546,
  },
  {
    id: 'reynolds-chest-curve',
    name: 'Reynolds et al. 2006, chest press curve',
    formula: '100 * w / (48.47 + 55.51 * exp(-0.0723 * r))',
    source: { ...reynolds, standing: 'recalled' },
    madeFrom: adults,
    lift: 'bench-press',
    validReps: [1, 20],
    knownError: 'R2 0.993, 0.976 and 0.955 at 5, 10 and 20 repetitions',
    oneRepMaxKg: (w, r) => (100 * w) / (48.47 + 55.51 * Math.exp(-0.0723 * r)),
  },
  {
    id: 'reynolds-leg-curve',
    name: 'Reynolds et al. 2006, leg press curve',
    formula: '100 * w / (26.41 + 78.17 * exp(-0.0569 * r))',
    source: { ...reynolds, standing: 'recalled' },
    madeFrom: adults,
    lift: 'leg-press',
    validReps: [1, 20],
    knownError: 'R2 0.974, 0.933 and 0.915 at 5, 10 and 20 repetitions',
    oneRepMaxKg: (w, r) => (100 * w) / (26.41 + 78.17 * Math.exp(-0.0569 * r)),
  },
  {
    id: 'braith-untrained',
    name: 'Braith et al. 1993, untrained',
    formula: '1.554 * w - 5.181',
    source: braith,
    madeFrom: 'untrained adults, knee extension machine',
    lift: 'knee-extension',
    validReps: [7, 10],
    knownError: 'standard error of estimate 9.3 kg; 21.2 kg too much after 18 weeks of training',
    oneRepMaxKg: (w) => 1.554 * w - 5.181,
  },
  {
    id: 'braith-trained',
    name: 'Braith et al. 1993, after 18 weeks',
    formula: '1.172 * w + 7.704',
    source: braith,
    madeFrom: 'adults after 18 weeks of training, knee extension machine',
    lift: 'knee-extension',
    validReps: [7, 10],
    knownError: 'standard error of estimate 9.9 kg, R2 0.91',
    oneRepMaxKg: (w) => 1.172 * w + 7.704,
  },
  {
    id: 'powerlifters-squat',
    name: 'High-school powerlifters 2003, squat',
    formula: '159.9 + 0.103 * r * w - 11.552 * r',
    source: powerlifters,
    madeFrom: `${lifters}, sets at 70 % of the one-rep max`,
    lift: 'squat',
    validShares: [0.65, 0.75],
    knownError: 'standard error of estimate 5.06 kg',
    oneRepMaxKg: (w, r) => 159.9 + 0.103 * r * w - 11.552 * r,
  },
  {
    id: 'powerlifters-bench',
    name: 'High-school powerlifters 2003, bench press',
    formula: '90.66 + 0.085 * r * w - 5.306 * r',
    source: powerlifters,
    madeFrom: `${lifters}, sets at 70 % of the one-rep max`,
    lift: 'bench-press',
    validShares: [0.65, 0.75],
    knownError: 'standard error of estimate 2.69 kg',
    oneRepMaxKg: (w, r) => 90.66 + 0.085 * r * w - 5.306 * r,
  },
  {
    id: 'powerlifters-deadlift',
    name: 'High-school powerlifters 2003, deadlift',
    formula: '156.08 + 0.098 * r * w - 12.106 * r',
    source: powerlifters,
    madeFrom: `${lifters}, sets at 80 % of the one-rep max`,
    lift: 'deadlift',
    validShares: [0.75, 0.85],
    knownError: 'standard error of estimate 4.97 kg',
    oneRepMaxKg: (w, r) => 156.08 + 0.098 * r * w - 12.106 * r,
  },
];
