import type { Source } from '../basis/index.ts';
import { fernandes2021 } from './recoverySources.ts';

/** Something people expect to change the hours, and why it does not here. */
export interface NotCounted {
  readonly factor: 'age' | 'protein-synthesis' | 'protein-intake';
  readonly why: string;
  readonly sources: readonly Source[];
}

/** What the recovery model leaves out on purpose. */
export const notCounted: readonly NotCounted[] = [
  {
    factor: 'age',
    why: 'Studies of older and younger lifters disagree about the direction, so nobody gets longer hours for a birthday. What a person reports counts instead.',
    sources: [
      fernandes2021,
      {
        id: 'recovery-65-scoping-2023',
        citation: 'Scoping review of recovery at 65 and over, 27 studies: inconsistent, few women',
        doi: '10.1186/s40798-023-00597-1',
        standing: 'verified',
      },
    ],
  },
  {
    factor: 'protein-synthesis',
    why: 'It shows a muscle rebuilding, not whether it can perform: one set was back at rest by 29 h and three sets were not, while repetitions follow other hours.',
    sources: [
      {
        id: 'burd-2010',
        citation: 'Burd NA et al. J Physiol 2010;588:3119-3130',
        standing: 'verified',
      },
    ],
  },
  {
    factor: 'protein-intake',
    why: 'It bears on growth over weeks (no more gain beyond about 1.6 g per kg and day); hours until ready were not measured against it.',
    sources: [
      {
        id: 'morton-2018',
        citation: 'Morton RW et al. Br J Sports Med 2018;52:376-384, 49 trials',
        doi: '10.1136/bjsports-2017-097608',
        standing: 'verified',
      },
    ],
  },
];
