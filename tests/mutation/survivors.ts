import { readdirSync, readFileSync } from 'node:fs';
import type { Mutant } from './tryMutants.ts';

/** A change that no test notices, for a reason that holds. */
interface Survivor {
  readonly file: string;
  /** The line as it stands, without the blanks around it: its number changes too often. */
  readonly line: string;
  /** What is put in; any change of the line where it is left out. */
  readonly replacement?: string;
  readonly reason: string;
}

/** One file a folder of core. */
const folder = new URL('survivors/', import.meta.url);
export const explained: readonly Survivor[] = readdirSync(folder).flatMap((name) =>
  JSON.parse(readFileSync(new URL(name, folder), 'utf8')),
);

/** Where a mutant is and what it does, for reading and for the explained ones. */
export function placeOf({ fileName, location, replacement }: Mutant, root: string) {
  const path = fileName.replaceAll('\\', '/');
  const file = path.slice(path.indexOf('packages/core/'));
  const lines = readFileSync(`${root}/${file}`, 'utf8').split('\n');
  const line = (lines[location.start.line - 1] ?? '').trim();
  return { file, line, replacement, number: location.start.line };
}

/** Whether a survivor is one that has been looked at and explained. */
export function isExplained({ file, line, replacement }: ReturnType<typeof placeOf>): boolean {
  return explained.some(
    (one) =>
      one.file === file &&
      one.line === line &&
      (one.replacement === undefined || one.replacement === replacement),
  );
}
