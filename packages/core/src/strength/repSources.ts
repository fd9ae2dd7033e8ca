import type { Source } from '../basis/index.ts';

// Where counts of repetitions at shares of the one-rep max were published.

export const nuzzo: Source = {
  id: 'nuzzo-2024-general-table-rounded',
  citation:
    'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Maximal number of repetitions at percentages of the one repetition maximum. Sports Med 2024;54:303-321 (whole repetitions, as recalled)',
  doi: '10.1007/s40279-023-01937-7',
  standing: 'recalled',
};

export const wolfe: Source = {
  id: 'wolfe-2024-women-powerlifts',
  citation:
    'Wolfe A, Caddel R, Braden G, et al. Differences in female lift quality during back squat, bench press, and deadlift. Int J Strength Cond 2024;4(1)',
  doi: '10.47206/ijsc.v4i1.266',
  standing: 'verified',
};

export const richens: Source = {
  id: 'richens-cleather-2014',
  citation:
    'Richens B, Cleather DJ. The relationship between the number of repetitions performed at given intensities is different in endurance and strength trained athletes. Biol Sport 2014;31(2):157-161',
  doi: '10.5604/20831862.1099047',
  standing: 'verified',
};

export const cooke: Source = {
  id: 'cooke-2019-squat-70',
  citation:
    'Cooke DM, Haischer MH, Carzoli JP, et al. Body mass and femur length are inversely related to repetitions performed in the back squat in well-trained lifters. J Strength Cond Res 2019;33(3):890-895',
  doi: '10.1519/JSC.0000000000003021',
  standing: 'verified',
};

export const shimano: Source = {
  id: 'shimano-2006-verified-cell',
  citation:
    'Shimano T, Kraemer WJ, Spiering BA, et al. J Strength Cond Res 2006;20(4):819-823, as quoted by Cooke et al. 2019',
  doi: '10.1519/R-18195.1',
  standing: 'verified',
};

export const pereira: Source = {
  id: 'pereira-2007-knee-extension-speed',
  citation:
    'Pereira MIR, Gomes PSC, Bhambhani Y. Maximum number of repetitions in isotonic exercises. Rev Bras Med Esporte 2007;13(5):287-291',
  doi: '10.1590/S1517-86922007000500002',
  standing: 'verified',
};

export const hoeger: Source = {
  id: 'hoeger-1987-1990-reps-by-lift',
  citation:
    'Hoeger WWK, Barette SL, Hale DF, Hopkins DR. J Appl Sport Sci Res 1987;1(1):11-13, and Hoeger WWK, Hopkins DR, Barette SL, Hale DF. 1990;4(2):47-54',
  standing: 'recalled',
};

export const hatfield: Source = {
  id: 'hatfield-2006-very-slow',
  citation:
    'Hatfield DL, Kraemer WJ, Spiering BA, et al. The impact of velocity of movement on performance factors in resistance exercise. J Strength Cond Res 2006;20(4):760-766 (the sets at a pace of their own)',
  doi: '10.1519/R-17901.1',
  standing: 'verified',
};
