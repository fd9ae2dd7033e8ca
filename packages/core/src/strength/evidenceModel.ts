import type { Source } from '../basis/index.ts';
import { evidenceFigures } from './evidenceFigures.ts';

/** A figure of the evidence model and what it rests on. */
interface Sourced<T> {
  readonly value: T;
  readonly source: Source;
}

const mitter: Source = {
  id: 'mitter-2022-reliability',
  citation:
    'Mitter B, Csapo R, Bauer P, Tschan H. Reproducibility of strength performance and strength-endurance profiles: a test-retest study. PLoS One 2022;17(5):e0268074',
  doi: '10.1371/journal.pone.0268074',
  standing: 'verified',
};

const halperin: Source = {
  id: 'rir-accuracy',
  citation:
    'Halperin I, et al. Accuracy in predicting repetitions to task failure in resistance exercise: a scoping review and exploratory meta-analysis. Sports Med 2022;52:377-390',
  doi: '10.1007/s40279-021-01559-x',
  standing: 'verified',
};

const fit: Source = {
  id: 'rep-curve-residuals',
  citation:
    'Error of the fitted rep curve over published rows from 40 to 95 % of the one-rep max (tests/evidence/repCurve)',
  standing: 'derived',
};

const choice = (citation: string): Source => ({
  id: 'windlass-choice',
  citation,
  standing: 'convention',
});

/** How far a counted set can lie from the curve, and for which reasons. */
export const evidenceModel = {
  /** Standard deviation of a repeated count: `base + perRep * reps`. */
  repeat: { value: evidenceFigures.repeat, source: mitter },
  /** Error of the curve's form, as a share of the count: `base`, and more per share below `from`. */
  form: { value: evidenceFigures.form, source: fit },
  /** People have so many more repetitions left than they say, give or take. */
  reserve: {
    value: evidenceFigures.reserve,
    source: halperin,
  },
  /** Day-to-day standard deviation of ln(one-rep max): below the test-retest CV, median 4.2 %. */
  day: {
    value: evidenceFigures.day,
    source: {
      id: 'grgic-2020',
      citation:
        'Grgic J, Lazinica B, Schoenfeld BJ, Pedisic Z. Test-retest reliability of the one-repetition maximum (1RM) strength assessment: a systematic review. Sports Med Open 2020;6:31',
      doi: '10.1186/s40798-020-00260-z',
      standing: 'verified',
    },
  },
  /** Share of sets that were counted, loaded or noted wrongly, and how wide those lie. */
  slip: {
    value: evidenceFigures.slip,
    source: choice('One set in twenty may be off by several times the repeat error'),
  },
  /** Doubt of a known pace: in ln kappa per |ln(seconds / 3)|, and in the load per second off 3. */
  pace: {
    value: evidenceFigures.pace,
    source: choice(
      'Spread of the published pace exponents; slower single lifts are weaker by an unpublished amount (Wilk 2020)',
    ),
  },
  /** Doubt when nobody knows the pace: in ln kappa and in the load. */
  unknownPace: {
    value: evidenceFigures.unknownPace,
    source: choice('Unwatched sets run at about 2 to 4.5 s a repetition, put through the pace law'),
  },
  /** Doubt of a stated capacity, as a share of what is missing from 1. */
  capacity: {
    value: evidenceFigures.capacity,
    source: choice('The capacity model misses published later sets by about a fifth of the loss'),
  },
} as const satisfies Readonly<Record<string, Sourced<unknown>>>;
