import type { Source } from '../basis/index.ts';

/** What was found about an isolation lift before a compound one. */
export const pairSources: readonly Source[] = [
  {
    id: 'augustsson-2003',
    citation:
      'Augustsson J, Thomee R, Hornstedt P et al. J Strength Cond Res 2003;17(2):411-416: fewer leg press repetitions after knee extensions, and less activity of the thigh muscles.',
    standing: 'verified',
  },
  {
    id: 'spreuwenberg-2006-order',
    citation:
      'Spreuwenberg LPB, Kraemer WJ, Spiering BA et al. J Strength Cond Res 2006;20(1):141-144: 8.0 squats at 85 % first in a session, 5.4 after a whole one. It bounds what one set before can cost.',
    standing: 'verified',
  },
  {
    id: 'gentil-2007',
    citation:
      'Gentil P et al. 2007, 13 men: whichever lift came second got worse, total repetitions and work were the same, triceps activity rose when the press came second.',
    doi: '10.1519/R-21216.1',
    standing: 'verified',
  },
  {
    id: 'brennecke-2009',
    citation:
      'Brennecke A et al. 2009, 12 trained, fly before bench press: chest and shoulder activity unchanged, triceps activity higher.',
    doi: '10.1519/JSC.0b013e3181b73b8f',
    standing: 'verified',
  },
  {
    id: 'fisher-2014',
    citation:
      'Fisher JP et al. 2014, 39 trained adults, 12 weeks: the order made no difference to strength gained.',
    doi: '10.1139/apnm-2014-0162',
    standing: 'verified',
  },
  {
    id: 'trindade-2019',
    citation:
      'Trindade TB et al. 2019, 31 untrained men, 9 weeks of leg press with or without leg extension before it: similar gains, less training volume.',
    doi: '10.3389/fphys.2019.01424',
    standing: 'verified',
  },
];

/** Thresholds of the pair rules. */
export const pairPractice: Source = {
  id: 'pair-practice',
  citation:
    'Which muscles may be tired, and how long the way may be: training practice, written down by this project.',
  standing: 'convention',
};
