import { importLog } from './importLog.ts';
import type { ImportedLog } from './LoggedSet.ts';
import { logCsvColumns } from './logCsvColumns.ts';

/**
 * Reads a CSV file of our own format, as `writeLogCsv` describes it.
 *
 * @returns all sets, and every row that could not be read with its line, its text and the reason.
 * @example
 * ```ts
 * import { readLogCsv, writeLogCsv } from '@windlass/core/progress';
 * readLogCsv(writeLogCsv([])); // { sets: [], unread: [] }
 * readLogCsv('date;load\n2026-03-02;5').unread[0]?.line; // 1
 * ```
 */
export function readLogCsv(text: string): ImportedLog {
  const columns = Object.fromEntries(logCsvColumns.map((name) => [name, name])) as Record<
    (typeof logCsvColumns)[number],
    string
  >;
  return importLog(text, {
    columns,
    separator: ',',
    unit: 'kg',
    decimalMark: '.',
  });
}
