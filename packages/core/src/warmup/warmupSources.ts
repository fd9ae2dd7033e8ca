import type { Source } from '../basis/index.ts';

/** What the ramp and its options rest on. */
export const warmupSources = {
  fewRepsNearTheWork: {
    id: 'ribeiro-2020',
    citation:
      'Ribeiro B, Pereira A, Neves PP, et al. Int J Environ Res Public Health 2020;17(18):6882: six repetitions at 40 % and six at 80 % of the training load before squat and bench press; 40 people.',
    doi: '10.3390/ijerph17186882',
    standing: 'verified',
  },
  fasterFirstSet: {
    id: 'ribeiro-2021',
    citation:
      "Ribeiro B, Pereira A, Alves AR, et al. J Men's Health 2021: the same warm-up against none; first-set velocity higher in the squat (ES 0.91) and the bench press (ES 0.56); 34 people.",
    doi: '10.31083/jomh.2021.069',
    standing: 'verified',
  },
  noMoreReps: {
    id: 'ribeiro-a-2014',
    citation:
      'Ribeiro AS, Romanzini M, Schoenfeld BJ, et al. Percept Mot Skills 2014;119(1):133-145: no warm-up, specific, aerobic and combined made no difference to repetitions at 80 % of the one-rep max; 15 people.',
    standing: 'verified',
  },
  manyRepsCost: {
    id: 'borges-warmup',
    citation:
      'Borges and others, Revista Brasileira de Prescrição e Fisiologia do Exercício: two warm-up sets of 15 came with fewer repetitions in five sets to failure (p = 0.055).',
    standing: 'verified',
  },
  noInjuryData: {
    id: 'mccrary-2015',
    citation:
      'McCrary JM, Ackermann BJ, Halaki M. Br J Sports Med 2015;49(14):935-942: 31 trials of upper-body warm-ups; high-load dynamic ones help strength and power, none gives data on injuries.',
    standing: 'verified',
  },
  secondLift: {
    id: 'rewarmup-2025',
    citation:
      'Preprint 2025: repeating the specific warm-up before a second lift helped the squat (d 0.45 to 0.62), not the bench press (d 0.10 to 0.38); 22 people.',
    doi: '10.20944/preprints202503.2347.v1',
    standing: 'verified',
  },
  potentiationSmall: {
    id: 'dobbs-2019',
    citation:
      'Dobbs WC, Tolusso DV, Fedewa MV, Esco MR. J Strength Cond Res 2019;33(7):2009-2018: effect on jumps 0.08 over all, 0.18 after 3 to 7 min.',
    standing: 'verified',
  },
  potentiationMixed: {
    id: 'seitz-2016',
    citation:
      'Seitz LB, Haff GG. Sports Med 2016;46(2):231-240: heavy conditioning 0.41 and moderate 0.19 on explosive tasks, largest after 5 to 7 min (0.49).',
    standing: 'verified',
  },
  rampShape: {
    id: 'windlass-ramp-shape',
    citation:
      'Convention of this project, after worked examples of coaches: number of steps, jumps that shrink, repetitions that fall, rests. Not a measurement.',
    standing: 'convention',
  },
} as const satisfies Readonly<Record<string, Source>>;
