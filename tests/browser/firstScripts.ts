import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The scripts that a script asks for before it can run, itself first; what it fetches later is not among them. */
export function firstScripts(file: string, seen: Set<string> = new Set()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const imports = readFileSync(file, 'utf8').matchAll(/(?:from|import)\s*"(\.[^"]+\.js)"/g);
  for (const [, path = ''] of imports) firstScripts(join(dirname(file), path), seen);
  return seen;
}

/** Bytes of files as they travel, each compressed by itself. */
export function bytesOnTheWay(files: Iterable<string>): number {
  return [...files].reduce(
    (sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length,
    0,
  );
}

/** The one file of a folder whose name begins so. */
export function fileNamed(folder: string, start: string): string {
  const [found, ...others] = readdirSync(folder).filter(
    (name) => name.startsWith(start) && name.endsWith('.js'),
  );
  if (found === undefined || others.length > 0)
    throw new Error(`${folder} has not one file ${start}`);
  return join(folder, found);
}
