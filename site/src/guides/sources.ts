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
    id: 'ahtiainen-2003',
    citation:
      'Ahtiainen JP, et al. 2003, forced reps against the most reps alone, 16 athletes. Int J Sports Med 2003;24(6):410–418',
    doi: '10.1055/s-2003-41171',
    standing: 'verified',
  },
  {
    id: 'augustsson-2003',
    citation:
      'Augustsson et al. 2003, ten-rep knee extension straight before a ten-rep leg press, 17 men. PubMed 12741886',
    standing: 'verified',
  },
  {
    id: 'burd-2010',
    citation: 'Burd et al. 2010, one and three sets to fatigue, 8 trained men. J Physiol 2010',
    standing: 'verified',
  },
  {
    id: 'clarkson-2006',
    citation:
      'Clarkson PM, et al. 2006, 50 maximal lowerings with the elbow flexors, 203 people. Med Sci Sports Exerc 2006;38(4):623–627',
    doi: '10.1249/01.mss.0000210192.49210.fc',
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
    id: 'craven-2022',
    citation: 'Meta-analysis of sleep loss and performance: 227 outcomes',
    doi: '10.1007/s40279-022-01706-y',
    standing: 'verified',
  },
  {
    id: 'damas-2016',
    citation:
      'Damas et al. 2016, biopsies in weeks 1, 3 and 10 of training, 10 young men. J Physiol',
    doi: '10.1113/JP272472',
    standing: 'verified',
  },
  {
    id: 'fernandes-2021',
    citation:
      'Fernandes et al. 2021, 11 studies of recovery in older and younger men. J Aging Phys Act 2021;29(3):544–551',
    standing: 'verified',
  },
  {
    id: 'ferreira-2017',
    citation:
      'Ferreira et al. 2017, eight sets of bench press to failure, 18 trained men. Muscle Nerve 2017',
    standing: 'verified',
  },
  {
    id: 'fisher-2014',
    citation:
      'Fisher et al. 2014, 39 trained adults, 12 weeks with and without an isolation lift first',
    doi: '10.1139/apnm-2014-0162',
    standing: 'verified',
  },
  {
    id: 'forced-reps',
    citation:
      'Giessing J, Steele J, Fisher J. Forced repetitions, open data of a preprint: 37 trained people, one set to failure at a load of 10 to 12 reps. osf.io/32758; medians worked out from the data',
    standing: 'verified',
  },
  {
    id: 'gentil-2007',
    citation: 'Gentil et al. 2007, an isolation and a compound lift in both orders, 13 men',
    doi: '10.1519/R-21216.1',
    standing: 'verified',
  },
  {
    id: 'gonzalez-badillo-2016',
    citation:
      'González-Badillo et al. 2016, three sets of eight to failure against three of four, 9 men',
    doi: '10.1055/s-0035-1564254',
    standing: 'verified',
  },
  {
    id: 'grgic-2022',
    citation: 'Grgic et al. 2022, meta-analysis of 15 studies of failure against stopping short',
    doi: '10.1016/j.jshs.2021.01.007',
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
    id: 'krieger-2010',
    citation: 'Krieger 2010, meta-analysis of 8 studies of single and multiple sets',
    doi: '10.1519/JSC.0b013e3181d4d436',
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
    id: 'macdougall-1985',
    citation:
      'MacDougall JD, et al. 1985, pressure measured in the artery during leg press and curls to failure. J Appl Physiol 1985;58(3):785–790',
    doi: '10.1152/jappl.1985.58.3.785',
    standing: 'verified',
  },
  {
    id: 'mccrary-2015',
    citation:
      'McCrary et al. 2015, review of 31 trials of upper-body warm-ups. Br J Sports Med 2015;49(14):935',
    standing: 'verified',
  },
  {
    id: 'mclester-2001',
    citation:
      'McLester et al. 2001, abstract: seven sets of eight exercises to failure, 10 trained men',
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
    id: 'nuzzo-2023',
    citation:
      'Nuzzo JL, Pinto MD, Nosaka K, Steele J. 2023, meta-analysis of 335 studies of lowering against lifting strength. Sports Med 2023;53(6):1125–1136',
    doi: '10.1007/s40279-023-01851-y',
    standing: 'verified',
  },
  {
    id: 'pelland-2024',
    citation:
      'Pelland et al. 2024, preprint, 67 studies and 2058 people: weekly sets, size and strength. OSF 6z3xu',
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
    id: 'robinson-2024',
    citation:
      'Robinson et al. 2024, how near to failure sets end: meta-regressions of strength and size',
    doi: '10.1007/s40279-024-02069-2',
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
    id: 'steele-2022',
    citation:
      'Steele et al. 2022, 14,690 people, six lifts, one set to failure once a week, for up to 352 weeks',
    doi: '10.1080/02701367.2022.2070592',
    standing: 'verified',
  },
  {
    id: 'steele-volume',
    citation:
      'Steele et al., preregistered trial, 9 against 36 weekly sets, 87 trained people tested after 12 weeks',
    doi: '10.51224/SportRxiv.810',
    standing: 'verified',
  },
  {
    id: 'tanimoto-2008',
    citation: 'Tanimoto et al. 2008, whole-body training, slow reps against normal speed',
    doi: '10.1519/JSC.0b013e318185f2b0',
    standing: 'verified',
  },
  {
    id: 'trindade-2019',
    citation:
      'Trindade et al. 2019, 31 untrained men, nine weeks of leg press with or without leg extension to failure first',
    doi: '10.3389/fphys.2019.01424',
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
