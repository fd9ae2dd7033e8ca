import type { Source } from '../basis/index.ts';
import { liftEquations } from './liftEquations.ts';
import type { OneRepMaxEquation } from './OneRepMaxEquation.ts';

function recalled(id: string, citation: string): Source {
  return { id, citation, standing: 'recalled' };
}

const usualError =
  '3 to 10 % for one person in validations; the kind underestimates older adults and the deadlift';

/** Equations for any lift, of the form load divided by a share that depends on the repetitions. */
const generalEquations: readonly OneRepMaxEquation[] = [
  {
    id: 'epley',
    name: 'Epley 1985',
    formula: 'w * (1 + 0.0333 * r)',
    source: recalled(
      'epley-1985',
      'Epley B. Poundage chart. In: Boyd Epley Workout. Lincoln, NE: Body Enterprises; 1985',
    ),
    madeFrom: 'a poundage chart, not based on research (Richens & Cleather 2014, table 1)',
    validReps: [2, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w * (1 + 0.0333 * r),
  },
  {
    id: 'brzycki',
    name: 'Brzycki 1993',
    formula: 'w / (1.0278 - 0.0278 * r)',
    source: recalled(
      'brzycki-1993',
      'Brzycki M. Strength testing: predicting a one-rep max from reps-to-fatigue. JOPERD 1993;64(1):88-90',
    ),
    madeFrom: 'stated without its data (Richens & Cleather 2014, table 1); singular at 36.97 reps',
    validReps: [1, 10],
    knownError:
      'most accurate of six up to 10 reps in 220 men, bench press (Mayhew and others 1995)',
    oneRepMaxKg: (w, r) => w / (1.0278 - 0.0278 * r),
  },
  {
    id: 'lander',
    name: 'Lander 1985',
    formula: '100 * w / (101.3 - 2.67123 * r)',
    source: recalled('lander-1985', 'Lander J. Maximums based on reps. NSCA J 1985;6(6):60-61'),
    madeFrom: 'began as a guessed chart (Richens & Cleather 2014, table 1); singular at 37.92 reps',
    validReps: [2, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => (100 * w) / (101.3 - 2.67123 * r),
  },
  {
    id: 'lombardi',
    name: 'Lombardi 1989',
    formula: 'w * r^0.10',
    source: recalled(
      'lombardi-1989',
      'Lombardi VP. Beginning Weight Training. Dubuque, IA: WC Brown; 1989',
    ),
    madeFrom: 'a textbook',
    validReps: [1, 11],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w * r ** 0.1,
  },
  {
    id: 'mayhew',
    name: 'Mayhew et al. 1992',
    formula: '100 * w / (52.2 + 41.9 * exp(-0.055 * r))',
    source: recalled(
      'mayhew-1992',
      'Mayhew JL, Ball TE, Arnold MD, Bowen JC. J Appl Sport Sci Res 1992;6(4):200-206',
    ),
    madeFrom: 'bench press sets at 55 to 95 % of the one-rep max',
    validShares: [0.55, 0.95],
    knownError: usualError,
    oneRepMaxKg: (w, r) => (100 * w) / (52.2 + 41.9 * Math.exp(-0.055 * r)),
  },
  {
    id: 'oconner',
    name: "O'Conner et al. 1989",
    formula: 'w * (1 + 0.025 * r)',
    source: recalled(
      'oconner-1989',
      "O'Conner B, Simmons J, O'Shea P. Weight Training Today. St Paul, MN: West; 1989",
    ),
    madeFrom: 'a textbook',
    validReps: [2, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w * (1 + 0.025 * r),
  },
  {
    id: 'wathen',
    name: 'Wathen 1994',
    formula: '100 * w / (48.8 + 53.8 * exp(-0.075 * r))',
    source: recalled(
      'wathen-1994',
      'Wathen D. Load assignment. In: Baechle TR, ed. Essentials of Strength Training and Conditioning. Human Kinetics; 1994',
    ),
    madeFrom: 'a textbook chart without a peer-reviewed table (Richens & Cleather 2014, table 1)',
    validReps: [1, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => (100 * w) / (48.8 + 53.8 * Math.exp(-0.075 * r)),
  },
  {
    id: 'adams',
    name: 'Adams 1998',
    formula: 'w / (1 - 0.02 * r)',
    source: recalled(
      'adams-1998',
      'Adams GM. Exercise Physiology Laboratory Manual. 3rd ed. McGraw-Hill; 1998',
    ),
    madeFrom: 'a laboratory manual; singular at 50 reps',
    validReps: [2, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w / (1 - 0.02 * r),
  },
  {
    id: 'brown',
    name: 'Brown 1992',
    formula: 'w * (0.9849 + 0.0328 * r)',
    source: recalled('brown-1992', 'Brown HL. Lifetime Fitness. 3rd ed. Gorsuch Scarisbrick; 1992'),
    madeFrom: 'a textbook',
    validReps: [1, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w * (0.9849 + 0.0328 * r),
  },
  {
    id: 'welday',
    name: 'Welday 1988',
    formula: 'w * (1 + 0.0333 * r)',
    source: recalled(
      'welday-1988',
      'Welday J. Should you check for strength with periodic max lifts? Scholastic Coach 1988;57(9):49-68',
    ),
    madeFrom: 'the same form as Epley 1985',
    validReps: [2, 10],
    knownError: usualError,
    oneRepMaxKg: (w, r) => w * (1 + 0.0333 * r),
  },
  {
    id: 'kemmler',
    name: 'Kemmler et al. 2006',
    formula: 'w * (0.988 + 0.0104 * r + 0.00190 * r^2 - 0.0000584 * r^3)',
    source: {
      id: 'kemmler-2006',
      citation:
        'Kemmler WK, Lauber D, Wassermann A, Mayhew JL. J Strength Cond Res 2006;20(4):838-842',
      doi: '10.1519/R-18905.1',
      standing: 'verified',
    },
    madeFrom: '70 trained postmenopausal women on four machines',
    validReps: [3, 20],
    knownError: 'mean absolute difference 1.5 to 3.1 %, independent of lift and reps',
    oneRepMaxKg: (w, r) => w * (0.988 + 0.0104 * r + 0.0019 * r ** 2 - 0.0000584 * r ** 3),
  },
];

/**
 * Published equations for the one-rep max, each with who and what it was made from, where it holds
 * and how far it was off. Several in common use are conventions and not fits to data.
 */
export const oneRepMaxEquations: readonly OneRepMaxEquation[] = [
  ...generalEquations,
  ...liftEquations,
];
