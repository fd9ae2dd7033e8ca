import type { Source } from '@windlass/core/basis';

/** The publications the guides rest on. Figures in the guides were read in these, not recalled. */
const list = [
  {
    id: 'acsm-2009',
    citation:
      'American College of Sports Medicine. Progression models in resistance training for healthy adults. Med Sci Sports Exerc 2009;41:687–708. A consensus, not a measurement',
    doi: '10.1249/MSS.0b013e3181915670',
    standing: 'verified',
  },
  {
    id: 'cooke-2019',
    citation:
      'Cooke DM, Haischer MH, Carzoli JP, et al. Body mass and femur length are inversely related to repetitions performed in the back squat in well-trained lifters. J Strength Cond Res 2019;33(3):890–895',
    doi: '10.1519/JSC.0000000000003021',
    standing: 'verified',
  },
  {
    id: 'halperin-2022',
    citation:
      'Halperin et al. 2022, meta-analysis of how well people predict the reps they have left: 12 studies, 414 people',
    doi: '10.1007/s40279-021-01559-x',
    standing: 'verified',
  },
  {
    id: 'hatfield-2006',
    citation:
      'Hatfield DL, Kraemer WJ, Spiering BA, et al. The impact of velocity of movement on performance factors in resistance exercise. J Strength Cond Res 2006;20(4):760–766',
    doi: '10.1519/R-17901.1',
    standing: 'verified',
  },
  {
    id: 'hermes-2023',
    citation:
      'Hermes & Fry 2023, meta-analysis of 24 studies of intentionally slow lifting and strength',
    doi: '10.1519/jsc.0000000000004490',
    standing: 'verified',
  },
  {
    id: 'lachance-1994',
    citation:
      'LaChance PF, Hortobágyi T. Influence of cadence on muscular performance during push-up and pull-up exercise. J Strength Cond Res 1994;8(2):76–79',
    doi: '10.1519/00124278-199405000-00003',
    standing: 'verified',
  },
  {
    id: 'mccrary-2015',
    citation:
      'McCrary et al. 2015, review of 31 trials of upper-body warm-ups. Br J Sports Med 2015;49(14):935',
    standing: 'verified',
  },
  {
    id: 'mitter-2022',
    citation:
      'Mitter B, Csapo R, Bauer P, Tschan H. Reproducibility of strength performance and strength-endurance profiles: a test-retest study. PLoS One 2022;17(5):e0268074',
    doi: '10.1371/journal.pone.0268074',
    standing: 'verified',
  },
  {
    id: 'neves-2021',
    citation:
      'Neves, Ribeiro et al. 2021, review of 11 articles on warming up for one-rep max and reps',
    doi: '10.6063/motricidade.21143',
    standing: 'verified',
  },
  {
    id: 'pereira-2007',
    citation:
      'Pereira MIR, Gomes PSC, Bhambhani Y. Maximum number of repetitions in isotonic exercises: influence of load, speed and rest interval between sets. Rev Bras Med Esporte 2007;13(5):287–291',
    doi: '10.1590/S1517-86922007000500002',
    standing: 'verified',
  },
  {
    id: 'pound-1959',
    citation:
      'International yard and pound agreement, 1 July 1959: one pound is exactly 0.45359237 kg',
    standing: 'convention',
  },
  {
    id: 'ribeiro-2014',
    citation:
      'Ribeiro AS, et al. 2014, four warm-ups before sets at 80 % to failure, 15 people. Percept Mot Skills 2014;119(1):133–145',
    standing: 'verified',
  },
  {
    id: 'ribeiro-2021',
    citation:
      'Ribeiro B, et al. 2021, 34 people, a warm-up of six reps at 40 % and six at 80 % of the training load',
    doi: '10.31083/jomh.2021.069',
    standing: 'verified',
  },
  {
    id: 'richens-2014',
    citation:
      'Richens B, Cleather DJ. The relationship between the number of repetitions performed at given intensities is different in endurance and strength trained athletes. Biol Sport 2014;31(2):157–161',
    doi: '10.5604/20831862.1099047',
    standing: 'verified',
  },
  {
    id: 'schoenfeld-2015',
    citation:
      'Schoenfeld BJ, Ogborn D, Krieger JW. 2015, meta-analysis of 8 studies of repetition duration and muscle growth',
    doi: '10.1007/s40279-015-0304-0',
    standing: 'verified',
  },
  {
    id: 'tanimoto-2008',
    citation: 'Tanimoto et al. 2008, whole-body training, slow reps against normal speed',
    doi: '10.1519/JSC.0b013e318185f2b0',
    standing: 'verified',
  },
] as const satisfies readonly Source[];

export type SourceId = (typeof list)[number]['id'];

const byId = new Map<string, Source>(list.map((source) => [source.id, source]));

/** The publication with this id. Throws on an unknown id, so that a build with a wrong one fails. */
export function findSource(id: SourceId): Source {
  const source = byId.get(id);
  if (source === undefined) throw new RangeError(`findSource: no source named ${id}`);
  return source;
}
