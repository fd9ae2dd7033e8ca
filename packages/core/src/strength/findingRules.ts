import type { Source } from '../basis/index.ts';

/** How a first load is looked for. */
export const findingRules = {
  mostTries: 4,
  /** Repetitions of a trial set: the window's fewest, held between these. */
  trialReps: [5, 8],
  /** A trial set stops when so many are left. */
  stopWithLeft: 3,
  /** Left at least, when the lifter can only say that it was far too easy. */
  farTooEasy: 15,
  /** Largest step up as a factor of the last load, by what was left. */
  steps: [
    { fromLeft: 15, factor: 2 },
    { fromLeft: 10, factor: 1.8 },
    { fromLeft: 5, factor: 1.6 },
    { fromLeft: 3, factor: 1.3 },
    { fromLeft: 0, factor: 1.15 },
  ],
  /** A step above this factor is called large. */
  largeFrom: 1.3,
  /** A trial load may fail before its last repetition this often by the forecast. */
  mostFailing: 0.1,
  /** Found when the best load lands in the window this often by the forecast. */
  enough: 0.4,
  /** A first work load may end the set before the window this often. */
  carefulBefore: 0.2,
  /** A work load lies at most this factor above the heaviest load that was tried. */
  beyondTried: 1.25,
  /** The one-rep max before any set: so many times the first load, with this SD of its logarithm. */
  firstMax: { times: 6, sd: 0.8 },
  sources: [
    {
      id: 'coaching-consensus-first-load',
      citation:
        'Coaches asked by beginners agree on a search: start light, judge, step up, stop with some left, three or four sets at most',
      standing: 'convention',
    },
  ] satisfies readonly Source[],
} as const;
