import type {
  EvidenceReport,
  ReportedComparison,
  ReportedFigure,
  ReportedOrder,
  Share,
} from '../../site/src/evidence/EvidenceReport.ts';

/** The report as lines for a terminal; with `rows`, every row of every comparison too. */
export function printReport(report: EvidenceReport, rows: boolean): string {
  return [
    ...shares(report),
    ...misses(report),
    ...(rows ? report.comparisons.flatMap(everyRow) : []),
    ...aside(report),
    ...copies(report),
    ...left(report),
    ...simulated(report),
    ...constant(report),
    '',
  ].join('\n');
}

const percent = ({ counted, inside }: Share) =>
  counted === 0 ? 'none' : `${((100 * inside) / counted).toFixed(0)} %`;

function table(heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const all = [heads, ...rows];
  const widths = heads.map((_, column) =>
    Math.max(...all.map((row) => (row[column] ?? '').length)),
  );
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd();
  return [line(heads), line(widths.map((width) => '─'.repeat(width))), ...rows.map(line)];
}

const headed = (title: string, lines: readonly string[]) => ['', title.toUpperCase(), ...lines];

function shares({ comparisons, totals }: EvidenceReport): readonly string[] {
  return [
    ...headed(
      'Predicted against observed',
      table(
        ['comparison', 'rows', 'inside', 'share', 'of them foretold', 'worst row'],
        comparisons
          .filter(({ counted }) => counted > 0)
          .map((one) => [
            one.title,
            String(one.counted),
            String(one.inside),
            percent(one),
            one.foretold.counted > 0 ? `${one.foretold.inside} of ${one.foretold.counted}` : '',
            one.worst ?? '',
          ]),
      ),
    ),
    '',
    `${totals.inside} of ${totals.counted} rows within their tolerance: ${percent(totals)}; mean over the comparisons ${(100 * totals.meanShare).toFixed(0)} %.`,
    `Of the rows that no constant was chosen on, ${totals.foretold.inside} of ${totals.foretold.counted}: ${percent(totals.foretold)}.`,
  ];
}

function misses({ comparisons }: EvidenceReport): readonly string[] {
  return headed(
    'Missed, and why',
    comparisons.flatMap(({ title, tolerance, rows }) => {
      const missed = rows.filter((row) => !row.inside && row.aside === null);
      if (missed.length === 0) return [];
      return [
        `${title} (allowed: ${tolerance.rule})`,
        ...missed.map((row) => `  ${rowLine(row)}\n    ${row.miss ?? 'not explained'}`),
      ];
    }),
  );
}

function rowLine(row: ReportedFigure | ReportedOrder): string {
  if ('found' in row) return `${row.label}: found ${row.found}; given ${row.given}`;
  const { label, predicted, observed, low, high } = row;
  const seen = observed === null ? '' : `, observed ${observed}`;
  return `${label}: predicted ${predicted}${seen}, allowed ${low} to ${high ?? '…'}`;
}

function everyRow({ title, compares, tolerance, rows }: ReportedComparison): readonly string[] {
  return headed(title, [
    compares,
    `Allowed: ${tolerance.rule}. ${tolerance.reason}`,
    ...rows.map((row) => {
      const mark = row.aside !== null ? '–' : row.inside ? '✓' : '✗';
      return `  ${mark} ${rowLine(row)}${row.aside === null ? '' : ` (not counted: ${row.aside})`}`;
    }),
  ]);
}

function aside({ comparisons }: EvidenceReport): readonly string[] {
  const lines = comparisons.flatMap(({ title, rows }) => {
    const apart = rows.filter((row) => row.aside !== null);
    return [...new Set(apart.map((row) => row.aside))].map((why) => {
      const same = apart.filter((row) => row.aside === why);
      const inside = same.filter((row) => row.inside).length;
      return [title, String(same.length), String(inside), why ?? ''];
    });
  });
  return headed('Shown, not counted', table(['comparison', 'rows', 'inside', 'why'], lines));
}

function copies({ copiedFigures }: EvidenceReport): readonly string[] {
  return headed(
    'Copied and worked out, not counted',
    table(
      ['data set', 'figures', 'agree', 'what'],
      copiedFigures.map(({ table: id, figures, agree, says }) => [
        id,
        String(figures),
        String(agree),
        says,
      ]),
    ),
  );
}

function left({ notCompared }: EvidenceReport): readonly string[] {
  return headed(
    'Not compared',
    table(
      ['data set', 'why'],
      notCompared.map(({ table: id, why }) => [id, why]),
    ),
  );
}

function simulated({
  calibration: { coverage, windows, logs },
}: EvidenceReport): readonly string[] {
  const whole = (share: number) => `${(100 * share).toFixed(1)} %`;
  return [
    ...headed(
      `80 % intervals over ${coverage.trials} simulated lifters, seed ${coverage.seed}`,
      table(
        ['of', 'held'],
        [
          ['the one-rep max', whole(coverage.usual)],
          ['the one-rep max of the day', whole(coverage.today)],
          ['the next count to failure', whole(coverage.reps)],
        ],
      ),
    ),
    ...headed(
      `Failure inside the window over ${windows.trials} simulated lifters, seed ${windows.seed}`,
      table(
        ['window', 'the library', 'the best single equation', 'margin'],
        windows.hits.map(({ window, ours, best, theirs }) => [
          window,
          whole(ours),
          `${whole(theirs)} (${best})`,
          `${(100 * (ours - theirs)).toFixed(1)} points`,
        ]),
      ),
    ),
    ...headed(
      `80 % intervals after weeks of one set to failure a week, ${logs.lifters} simulated lifters, seed ${logs.seed}`,
      table(
        ['log', 'held', 'one-rep max off by'],
        logs.kinds.map(({ log, held, bias }) => [log, whole(held), whole(Math.expm1(bias))]),
      ),
    ),
  ];
}

function constant({ sameConstant: one }: EvidenceReport): readonly string[] {
  return headed('One constant from two fields', [
    `Loads held still: ${one.fatiguePerSecond} /s, so 1 / (${one.secondsPerRep} s × ${one.fatiguePerSecond}) = ${one.fromHolds}.`,
    `Counts to failure (recalled, in whole repetitions), curve with bend 1: ${one.fromCounts}.`,
    `The first was fitted to static efforts; nothing has tested it on lifting. The library uses bend ${one.usedAlpha} and ${one.usedKappa}.`,
  ]);
}
