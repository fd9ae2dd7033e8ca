import type {
  EvidenceReport,
  ReportedComparison,
  ReportedFigure,
  ReportedOrder,
  Totals,
} from '../../site/src/evidence/EvidenceReport.ts';
import { type Calibration, simulations } from './calibration.ts';
import { comparisons } from './comparisons.ts';
import { copiedFigures } from './copiedFigures.ts';
import { type Judged, type JudgedRow, judge } from './judge.ts';
import { notCompared } from './notCompared.ts';
import { readReference } from './readReference.ts';
import { sameConstant } from './sameConstant.ts';

/** Everything that the report says, from the comparisons and one run of the simulations. */
export function evidenceReport({ coverage, windows, logs }: Calibration): EvidenceReport {
  const judged = comparisons.map(judge);
  const report: EvidenceReport = {
    totals: totalsOf(judged),
    comparisons: judged.map(reported),
    copiedFigures: copiedFigures().map(({ table, says, pairs, within }) => ({
      table,
      says,
      figures: pairs.length,
      agree: pairs.filter(([ours, theirs]) => Math.abs(ours - theirs) <= within).length,
    })),
    notCompared,
    calibration: {
      coverage: { ...simulations.coverage, ...coverage },
      windows: { ...simulations.windows, hits: windows },
      logs: { ...simulations.logs, kinds: logs },
    },
    sameConstant: sameConstant(),
  };
  return rounded(report);
}

function totalsOf(judged: readonly Judged[]): Totals {
  const sum = (of: (one: Judged) => number) => judged.reduce((all, one) => all + of(one), 0);
  const asked = judged.filter(({ counted }) => counted > 0);
  return {
    counted: sum(({ counted }) => counted),
    inside: sum(({ inside }) => inside),
    meanShare: asked.reduce((all, one) => all + one.inside / one.counted, 0) / asked.length,
    foretold: {
      counted: sum(({ foretold }) => foretold.counted),
      inside: sum(({ foretold }) => foretold.inside),
    },
    aside: sum(({ rows, counted }) => rows.length - counted),
  };
}

function reported({
  comparison,
  rows,
  counted,
  inside,
  foretold,
  worst,
}: Judged): ReportedComparison {
  const { id, title, compares, tolerance, unit, logarithmic, note, tables } = comparison;
  const figures = rows.flatMap((row) => ('holds' in row || row.aside ? [] : [row]));
  return {
    id,
    title,
    compares,
    tolerance,
    unit: unit ?? null,
    logarithmic: logarithmic ?? false,
    note: note?.(figures) ?? null,
    counted,
    inside,
    foretold,
    worst: worst?.label ?? null,
    sources: tables.map((table) => {
      const { citation, doi, provenance, confidence } = readReference(table);
      return { table, citation, doi: doi ?? null, provenance, confidence };
    }),
    rows: rows.map(reportedRow),
  };
}

function reportedRow(row: JudgedRow): ReportedFigure | ReportedOrder {
  const { label, inside, fitted, aside, miss } = row;
  const common = {
    label,
    inside,
    fitted: fitted ?? false,
    aside: aside ?? null,
    miss: miss ?? null,
  };
  if ('holds' in row) return { ...common, found: row.found, given: row.given };
  const [low, high] = row.allowed;
  return {
    ...common,
    predicted: row.predicted,
    observed: row.observed ?? null,
    low,
    high: Number.isFinite(high) ? high : null,
  };
}

/** The same with every number kept to four digits, so that it does not hang on the last bits. */
function rounded<T>(value: T): T {
  return JSON.parse(
    JSON.stringify(value, (_, one) =>
      typeof one === 'number' && !Number.isInteger(one) ? Number(one.toPrecision(4)) : one,
    ),
  );
}
