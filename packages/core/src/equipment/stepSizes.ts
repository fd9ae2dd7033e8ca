import type { Source } from '../basis/index.ts';

/** A step above this share of the load is bridged first. */
export const LARGE_STEP_PERCENT = 10;

/** Above this, the repetitions that would foretell the next load leave the range of any rep curve. */
export const BEYOND_REPETITIONS_PERCENT = 40;

/** Repetitions are added up to here, not further. */
export const REPETITION_CEILING = 20;

export const stepSizeSources: readonly Source[] = [
  {
    id: 'acsm-2009',
    citation:
      'American College of Sports Medicine. Progression models in resistance training for healthy adults. Med Sci Sports Exerc 2009;41(3):687-708: raise the load by 2 to 10 % when one or two repetitions more than planned are done.',
    doi: '10.1249/MSS.0b013e3181915670',
    standing: 'verified',
  },
  {
    id: 'windlass-step-sizes',
    citation:
      'Convention of this project: a step of more than 40 % asks for some 25 repetitions before the same 8 can be expected with it, and counts above 20 say little about strength.',
    standing: 'convention',
  },
];
