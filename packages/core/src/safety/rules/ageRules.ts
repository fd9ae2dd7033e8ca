import type { CautionRule } from '../CautionRule.ts';
import type { ClientHealth } from '../ClientHealth.ts';
import { faigenbaum2009, mcLester2003, projectConvention, stricker2020 } from '../sources.ts';

/** An age that is not known is neither below a limit nor above it. */
const ageOf = ({ ageYears = Number.NaN }: ClientHealth) => ageYears;

/** Under 18 and over 65. */
export const ageRules: readonly CautionRule[] = [
  {
    caution: {
      id: 'under-18',
      level: 'caution',
      what: 'The person is under 18.',
      why: 'What sources agree on for this age is supervision, technique and no maximal lifts. Limits in percent of body weight found online contradict each other and are not used here.',
      instead:
        'A health check first and a qualified adult present. Technique with the own body weight, then light loads with many repetitions left, on two or three days that do not follow each other.',
      ask: ['qualified-adult', 'physician'],
      sources: [faigenbaum2009, stricker2020, projectConvention],
    },
    when: (client) => ageOf(client) < 18,
    limits: {
      maximalSingles: 'refused',
      estimatedMaxima: 'refused',
      failureChains: 'refused',
      longHolds: 'refused',
      forcedReps: 'refused',
      unsupervised: 'refused',
      repsInReserve: { atLeast: 3, firm: true },
    },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'over-65',
      level: 'note',
      what: 'The person is over 65.',
      why: 'Age alone does not call for light loads. Men of 50 to 65 were back at their repetitions after 48 h, but with less to spare at 72 h than young men.',
      instead:
        'Ordinary loads with one to three repetitions left, the smallest load step, and about 72 h between hard sessions for a muscle. No maximal single unless asked for.',
      ask: ['coach'],
      sources: [mcLester2003, projectConvention],
    },
    when: (client) => ageOf(client) > 65,
    limits: {
      maximalSingles: 'off-by-default',
      failureChains: 'off-by-default',
      repsInReserve: { atLeast: 1, firm: false },
    },
    clinicianMayReplace: true,
  },
];
