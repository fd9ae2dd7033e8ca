import type { CautionRule } from '../CautionRule.ts';
import { acog2020, projectConvention } from '../sources.ts';

/** Pregnancy and the first weeks after a birth. */
export const pregnancyRules: readonly CautionRule[] = [
  {
    caution: {
      id: 'pregnant',
      level: 'caution',
      what: 'The person is pregnant.',
      why: 'Exercise is encouraged in a pregnancy without complications, but which routine suits has to be settled with those who follow it; straining, held breath and long lying on the back are what sources limit.',
      instead:
        'Ask the obstetric care provider. Moderate loads, breathing out with every effort, short of failure, seated or standing instead of lying on the back.',
      ask: ['obstetric-care'],
      sources: [acog2020, projectConvention],
    },
    when: (client) => client.pregnancy === 'pregnant',
    limits: {
      maximalSingles: 'refused',
      failureChains: 'refused',
      longHolds: 'refused',
      forcedReps: 'refused',
      repsInReserve: { atLeast: 2, firm: true },
      supports: ['lying'],
    },
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'recent-birth',
      level: 'caution',
      what: 'A birth was less than twelve weeks ago.',
      why: 'How soon hard effort suits depends on the birth and the healing.',
      instead: 'Ask the obstetric care provider or a physiotherapist before sets go near failure.',
      ask: ['obstetric-care', 'physiotherapist'],
      sources: [acog2020, projectConvention],
    },
    when: (client) => client.pregnancy === 'birth-within-12-weeks',
    limits: {
      maximalSingles: 'refused',
      failureChains: 'refused',
      longHolds: 'refused',
      forcedReps: 'refused',
      repsInReserve: { atLeast: 3, firm: true },
    },
    clinicianMayReplace: true,
  },
];
