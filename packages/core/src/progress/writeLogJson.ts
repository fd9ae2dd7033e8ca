import type { LoggedSet } from './LoggedSet.ts';

/** A log as JSON: `{ "format": "windlass-log", "version": 1, "sets": [ … ] }`, each set a `LoggedSet`. */
export interface LogFile {
  readonly format: 'windlass-log';
  readonly version: 1;
  readonly sets: readonly LoggedSet[];
}

/**
 * Writes a log as JSON of our own format (`LogFile`), which `readLogJson` reads back exactly.
 *
 * @example
 * ```ts
 * import { writeLogJson } from '@windlass/core/progress';
 * JSON.parse(writeLogJson([])); // { format: 'windlass-log', version: 1, sets: [] }
 * ```
 */
export function writeLogJson(sets: readonly LoggedSet[]): string {
  const file: LogFile = { format: 'windlass-log', version: 1, sets };
  return `${JSON.stringify(file, undefined, 2)}\n`;
}
