import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const source = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'packages/core/src');

/** Packages that a file and all that it imports bring along; types bring nothing. */
function packagesOf(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const code = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  for (const [, from = ''] of code.matchAll(
    /^(?:import|export)(?! type)\b[^;]*?\bfrom '([^']+)'/gm,
  )) {
    if (from.startsWith('.')) packagesOf(join(dirname(file), from), seen);
    else seen.add(from);
  }
  return seen;
}

it('planning a session brings no other package along', () => {
  const files = packagesOf(join(source, 'session/index.ts'));
  expect([...files].filter((name) => !existsSync(name))).toEqual([]);
});

it('would notice one', () => {
  const files = packagesOf(join(source, 'schema/index.ts'));
  expect([...files].filter((name) => !existsSync(name))).toEqual(['zod/mini']);
});
