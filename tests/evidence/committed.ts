import { readFileSync, writeFileSync } from 'node:fs';
import type { EvidenceReport } from '../../site/src/evidence/EvidenceReport.ts';

/** Counted rows and those inside, by comparison. */
export type Shares = Readonly<
  Record<string, { readonly counted: number; readonly inside: number }>
>;

const data = new URL('../../site/src/evidence/report.json', import.meta.url);
const baseline = new URL('baseline.json', import.meta.url);

/** The report that the site shows. */
export const committedReport = (): EvidenceReport => JSON.parse(readFileSync(data, 'utf8'));

/** The shares that a change of a model must not worsen in silence. */
export const committedShares = (): Shares => JSON.parse(readFileSync(baseline, 'utf8'));

/** The shares of a report, as the baseline holds them. */
export function sharesOf({ comparisons }: EvidenceReport): Shares {
  return Object.fromEntries(
    comparisons.map(({ id, counted, inside }) => [id, { counted, inside }]),
  );
}

/** Takes a report as what the site shows, and its shares as the new baseline. */
export function accept(report: EvidenceReport): void {
  writeFileSync(data, `${JSON.stringify(report, null, 1)}\n`);
  const lines = Object.entries(sharesOf(report)).map(
    ([id, share]) => `  ${JSON.stringify(id)}: ${JSON.stringify(share)}`,
  );
  writeFileSync(baseline, `{\n${lines.join(',\n')}\n}\n`);
}
