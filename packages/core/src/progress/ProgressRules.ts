import type { Source } from '../basis/index.ts';

/** The rules of progression. Every one can be set by the coach. */
export interface ProgressRules {
  /** Smallest and largest step up in percent of the load. */
  readonly stepPercent: { readonly smallest: number; readonly largest: number };
  /** Sessions in a row with the top of the window in every top set, before the load rises. */
  readonly sessionsAtTop: number;
  /** So many repetitions over the top raise the load after one session. */
  readonly repsOverTop: number;
  /** Comparable sessions in a row under the target before it can be a stall. */
  readonly missesForStall: number;
  /** A gain below this rate in percent a week counts as none. */
  readonly worthwhilePercentPerWeek: number;
  /** Probability of no worthwhile gain from which a stall is spoken of. */
  readonly stallChance: number;
  /** From this probability of ending before the window on, a load is plainly too heavy for it. */
  readonly tooHeavyChance: number;
  /** How far a stalled load is taken back, in percent. */
  readonly resetPercent: number;
  /** More days than this without the exercise are a layoff. */
  readonly layoffDays: number;
}

/** The rules where nothing else is said; `progressRuleSources` has what each rests on. */
export const progressRules: ProgressRules = {
  stepPercent: { smallest: 2, largest: 10 },
  sessionsAtTop: 2,
  repsOverTop: 2,
  missesForStall: 3,
  worthwhilePercentPerWeek: 0.25,
  stallChance: 0.5,
  tooHeavyChance: 0.8,
  resetPercent: 10,
  layoffDays: 14,
};

const acsm: Source = {
  id: 'acsm-2009-progression',
  citation:
    'American College of Sports Medicine. Progression models in resistance training for healthy adults. Med Sci Sports Exerc 2009;41:687-708: 2 to 10 % more when one or two repetitions over the target are possible; a consensus',
  doi: '10.1249/MSS.0b013e3181915670',
  standing: 'verified',
};

const coaches = (citation: string): Source => ({
  id: 'coaching-consensus-progression',
  citation,
  standing: 'convention',
});

/** What each rule rests on. */
export const progressRuleSources: Readonly<Record<keyof ProgressRules, Source>> = {
  stepPercent: acsm,
  sessionsAtTop: coaches('Coaches: the top of the window twice, with form, then the smallest step'),
  repsOverTop: acsm,
  missesForStall: coaches('Lifters and coaches: three misses, or a clear trend over some weeks'),
  worthwhilePercentPerWeek: coaches('About one percent a month: less is not seen in a log'),
  stallChance: coaches('More likely than not'),
  tooHeavyChance: coaches(
    'A step up lands at the bottom of the window, so one in two ending early is expected; four in five are too many',
  ),
  resetPercent: coaches('About a tenth back, then up again in ordinary steps'),
  layoffDays: coaches('Ten days or two weeks matter little'),
};
