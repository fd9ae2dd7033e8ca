import type { Source } from '../basis/index.ts';
import { evidenceModel } from './evidenceModel.ts';
import { tempoLaw } from './tempoLaw.ts';

/** Why a forecast is less sure than its distance from the evidence would make it. */
export type ForecastDoubt =
  | 'light-load'
  | 'many-reps'
  | 'pace-unknown'
  | 'pace-too-fast'
  | 'pace-too-slow'
  | 'floor-only'
  | 'ceiling-only'
  | 'prior-only';

const ownReading: Source = {
  id: 'windlass-choice',
  citation: 'What the sets seen so far leave open',
  standing: 'convention',
};

/** What each doubt means, in words for people, and what it rests on. */
export const forecastDoubts: Readonly<
  Record<ForecastDoubt, { readonly reason: string; readonly source: Source }>
> = {
  'light-load': {
    reason: 'Below half of the one-rep max the curve errs by a sixth of the count and more.',
    source: evidenceModel.form.source,
  },
  'many-reps': {
    reason:
      'Long sets are ended by endurance more than by strength; past 10 to 12 repetitions published equations part.',
    source: {
      id: 'one-rm-equations-test-vectors',
      citation: 'Published one-rep-max equations evaluated side by side',
      standing: 'derived',
    },
  },
  'pace-unknown': {
    reason: 'The pace of the set is not known; slower repetitions are fewer.',
    source: tempoLaw.sources[0],
  },
  'pace-too-fast': {
    reason: 'Faster than 2 seconds a repetition the pace law was not seen to hold.',
    source: tempoLaw.sources[0],
  },
  'pace-too-slow': {
    reason: 'Slower than 10 seconds a repetition far fewer are done than the pace law says.',
    source: {
      id: 'hatfield-2006-very-slow',
      citation:
        'Hatfield DL, Kraemer WJ, Spiering BA, et al. The impact of velocity of movement on performance factors in resistance exercise. J Strength Cond Res 2006;20(4):760-766',
      doi: '10.1519/R-17901.1',
      standing: 'verified',
    },
  },
  'floor-only': {
    reason: 'Every set stopped short of failure: the lifter may be stronger than the high end.',
    source: {
      id: 'steele-2025-time-under-load',
      citation:
        'Steele J, Fisher J, Dettmann T. The effects of supervision on effort during resistance training (preprint): people stop at the target unless pushed, so a set at the target is a lower bound',
      standing: 'verified',
    },
  },
  'ceiling-only': {
    reason: 'No set gave a repetition: the lifter may be weaker than the low end.',
    source: ownReading,
  },
  'prior-only': {
    reason: 'No set has been seen yet.',
    source: ownReading,
  },
};
