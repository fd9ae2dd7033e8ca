import type { Source } from '../basis/index.ts';

/** One finding about how much work a muscle needs. */
export interface DoseFinding {
  /** What it speaks for. */
  readonly speaksFor: 'more-sets' | 'few-sets-suffice';
  readonly about: 'size' | 'strength' | 'both';
  readonly says: string;
  readonly source: Source;
}

const verified = (id: string, citation: string, doi?: string): Source => ({
  id,
  citation,
  ...(doi === undefined ? {} : { doi }),
  standing: 'verified',
});

/**
 * What studies found about weekly sets, both sides: meta-analyses see more growth with more sets,
 * single-set trials see most of the gain from one hard set, and a preregistered trial saw no
 * difference between 9 and 36 sets. They have not been reconciled.
 */
export const doseEvidence: readonly DoseFinding[] = [
  {
    speaksFor: 'more-sets',
    about: 'size',
    says: 'Each further weekly set went with an effect size 0.023 (0.37 %) larger; more against less, 0.24.',
    source: verified(
      'schoenfeld-2017',
      'Schoenfeld BJ, Ogborn D, Krieger JW. J Sports Sci 2017;35:1073-1082',
      '10.1080/02640414.2016.1210197',
    ),
  },
  {
    speaksFor: 'more-sets',
    about: 'size',
    says: 'Per exercise and session: effect size 0.24 with one set, 0.34 with two or three, 0.44 with four to six.',
    source: verified(
      'krieger-2010',
      'Krieger JW. J Strength Cond Res 2010;24(4):1150-1159',
      '10.1519/JSC.0b013e3181d4d436',
    ),
  },
  {
    speaksFor: 'more-sets',
    about: 'both',
    says: 'More fractional weekly sets went with more of both, with diminishing returns, much steeper ones for strength.',
    source: verified('pelland-2024', 'Pelland JC et al. SportRxiv 2024 (67 studies, 2058 people)'),
  },
  {
    speaksFor: 'few-sets-suffice',
    about: 'size',
    says: '9 against 36 fractional weekly sets over 12 weeks differed by 0.023 (90 % interval -0.044 to 0.091), where the meta-regression expects 0.294.',
    source: verified(
      'steele-2026',
      'Steele J et al. SportRxiv 2026: preregistered equivalence trial, 125 recruited, 87 tested after',
      '10.51224/SportRxiv.810',
    ),
  },
  {
    speaksFor: 'few-sets-suffice',
    about: 'strength',
    says: '14,690 people with one set to failure once a week on six lifts gained about 30 to 50 % strength in a year, then little.',
    source: verified(
      'steele-2022',
      'Steele J et al. Res Q Exerc Sport 2022',
      '10.1080/02701367.2022.2070592',
    ),
  },
  {
    speaksFor: 'few-sets-suffice',
    about: 'strength',
    says: 'One set one to three times a week was enough for trained men to gain on the one-rep max.',
    source: verified(
      'androulakis-korakakis-2020',
      'Androulakis-Korakakis P et al. Sports Med 2020;50:751-765 (6 studies)',
      '10.1007/s40279-019-01236-0',
    ),
  },
  {
    speaksFor: 'few-sets-suffice',
    about: 'strength',
    says: 'One set of 7 to 10 repetitions to failure on two or three days a week raised the one-rep max by 31.7 % in 18 weeks.',
    source: verified(
      'braith-1993',
      'Braith RW et al. Med Sci Sports Exerc 1993;25(1):132-138',
      '10.1249/00005768-199301000-00018',
    ),
  },
];
