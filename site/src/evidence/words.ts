import type { Share } from './EvidenceReport.ts';

const of = ({ counted, inside }: Share) => `${inside} of ${counted}`;

/** Every word of the evidence page that does not come from the report itself. */
export const words = {
  title: 'Evidence',
  description:
    'What the library predicts against what studies measured, row by row, with every miss and its reason.',
  says: 'What this library predicts, against what studies measured: every published row that could be used, with the tolerance it is held to, the reason for that tolerance, and each miss explained. Nothing here promises what one person will do; that is what the ranges are for.',
  totals: {
    name: 'In all',
    rows: 'published rows within their tolerance',
    share: (percent: number, mean: number) =>
      `${percent} %. Taking every comparison as one, whatever its length: ${mean} %.`,
    foretold: 'of the rows that no constant of the library was chosen on',
    foretoldWhy:
      'The others helped to choose a constant, so that meeting them shows that the form fits and not that it foretells.',
    aside: (rows: number) =>
      `${rows} more rows are shown and not counted: recalled from memory, inferred, or outside what the library answers.`,
  },
  overview: 'All comparisons',
  overviewColumns: { comparison: 'Comparison', inside: 'Within tolerance', share: 'Share' },
  of,
  shareOf: ({ counted, inside }: Share) => `${Math.round((100 * inside) / counted)} %`,
  none: 'shown, not counted',
  within: 'within the tolerance',
  foretold: (share: Share, counted: number) => {
    if (share.counted === 0) return 'All of them helped to choose a constant.';
    if (share.counted === counted) return 'No constant was chosen on any of them.';
    return `${of(share)} of those that no constant was chosen on.`;
  },
  tolerance: 'Allowed',
  missed: 'Missed, and why',
  sources: 'Sources',
  recalled: 'recalled, not read',
  plot: {
    observed: (unit: string) => `Observed, ${unit}`,
    predicted: 'Predicted',
    same: 'as observed',
    alt: (title: string, inside: number, counted: number) =>
      `${title}: predicted against observed, ${inside} of ${counted} points within their tolerance. The rows are in the table below.`,
    boundsAlt: (title: string, inside: number, counted: number) =>
      `${title}: ${inside} of ${counted} predictions between their bounds. The rows are in the table below.`,
    foretold: 'no constant was chosen on it',
    fitted: 'a constant was chosen on it',
    miss: 'missed, by its row',
    aside: 'not counted',
    allowed: 'allowed',
    open: 'open towards longer',
  },
  rows: (count: number) => (count === 1 ? 'The row' : `All ${count} rows`),
  tables: (count: number) => `All ${count} data sets`,
  columns: {
    number: 'Row',
    what: 'What',
    predicted: 'Predicted',
    observed: 'Observed',
    allowed: 'Allowed',
    found: 'Found',
    given: 'The library',
  },
  bounds: (low: string, high: string | null) => {
    if (high === null) return `over ${low}`;
    return low === '0' ? `up to ${high}` : `${low} to ${high}`;
  },
  states: {
    miss: 'Missed.',
    aside: (why: string) => `Not counted: ${why}.`,
    fitted: 'A constant was chosen on it.',
  },
  simulated: {
    name: 'Do the ranges hold?',
    says: 'People cannot be measured a thousand times, so lifters were drawn from published figures alone, without any formula of the library: their counts from printed tables, their errors and their days as measured. An 80 % range should hold in 80 of 100.',
    coverage: (trials: number, seed: number) =>
      `80 % ranges over ${trials} drawn lifters after one to six sessions; seed ${seed}`,
    usual: 'one-rep max',
    today: 'one-rep max of the day',
    reps: 'the next count to failure',
    width: (percent: number) => `The range of a one-rep max was ${percent} % wide in the mean.`,
    logsSay:
      'Most logs aim at one count and let the load follow the strength. Such counts hardly differ, so they say little about endurance; a range that took them for a sign of low endurance would lie too high. Strength is taken to wander here, and these lifters grow steadily, which makes it harder.',
    logs: (lifters: number, seed: number) =>
      `80 % ranges of the one-rep max over ${lifters} drawn lifters after one set to failure a week; seed ${seed}`,
    windows: (trials: number, seed: number) =>
      `Failure inside the wanted window over ${trials} drawn lifters; seed ${seed}`,
    windowsSay:
      'The load that the library recommends against the load by the published equation that did best in that window, chosen afterwards. One set of one to six is often all that is known.',
    window: (reps: string) => `${reps} reps`,
    ours: 'the library',
    theirs: 'the best single equation',
    equation: (name: string) => `by ${name}`,
    margin: (points: number) => `${points} points more`,
    columns: {
      window: 'Window',
      ours: 'Library',
      theirs: 'Best equation',
      margin: 'Difference',
      range: 'Range of',
      held: 'Held',
      log: 'Log',
      off: 'Mean error',
    },
    alt: 'The figures are in the table below.',
  },
  constant: {
    name: 'One constant, two fields',
    says: (rate: string, seconds: number, fromHolds: string, fromCounts: string) =>
      `A published model of muscle fatigue, fitted to loads held still, loses ${rate} of its capacity a second under full load. A repetition of ${seconds} s then has the constant 1 / (${seconds} × ${rate}) = ${fromHolds} of the rep curve with bend 1. The table made from 952 tests of lifting to failure gives ${fromCounts}.`,
    caveat: (kappa: string, alpha: string) =>
      `Take it as a coincidence that encourages, not as proof: the rate was fitted to static efforts, nothing has tested it on lifting, and the counts are recalled in whole repetitions. The library uses bend ${alpha} and ${kappa}, which fit light loads better.`,
  },
  copied: {
    name: 'Copied and worked out',
    says: 'Figures that the library repeats from a publication, or works out from its formula. They show that nothing was mistyped, and are counted nowhere.',
    agree: (agree: number, figures: number) => `${agree} of ${figures} agree`,
  },
  left: {
    name: 'Not compared',
    says: 'Collected data sets that stand against nothing here, and why.',
  },
  again: {
    name: 'Run it yourself',
    says: 'This page is made from the output of one command, and a change of a model that worsens a share fails the tests until the new figure is accepted.',
  },
} as const;
