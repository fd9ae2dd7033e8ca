import type { EvidenceReport } from './EvidenceReport.ts';
import data from './report.json';

/** What `npm run evidence` found last. */
export const report = data as EvidenceReport;
