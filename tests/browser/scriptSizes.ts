import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The scripts that a page of the built site loads by itself, each with its bytes when compressed. */
export function scriptSizes(page: string, dist: string): ReadonlyMap<string, number> {
  const html = readFileSync(page, 'utf8');
  const scripts = new Set(
    [...html.matchAll(/<script[^>]*src="\/(assets\/[^"]+)"/g)].map(([, file]) => file ?? ''),
  );
  for (const script of scripts) {
    const code = readFileSync(join(dist, script), 'utf8');
    for (const [, file] of code.matchAll(/\bfrom\s*"\.\/([^"]+)"/g)) scripts.add(`assets/${file}`);
  }
  return new Map(
    [...scripts].map((file) => [file, gzipSync(readFileSync(join(dist, file))).length]),
  );
}
