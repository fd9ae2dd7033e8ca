import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { floors } from './floors.ts';

const source = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'packages/core/src');

/** Which packages a folder's code may import, besides its own. */
const packages: Readonly<Record<string, readonly string[]>> = {
  schema: ['zod/mini'],
};

function codeOf(folder: string): readonly string[] {
  return readdirSync(join(source, folder), { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !/\.(prop\.)?test\.ts$|\.testing\.ts$|oracle/.test(file),
  );
}

function importsOf(folder: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const file of codeOf(folder)) {
    const text = readFileSync(join(source, folder, file), 'utf8');
    const code = text.replace(/\/\*[\s\S]*?\*\//g, '');
    for (const [, from = ''] of code.matchAll(/^(?:import|export)\b[^;]*?\bfrom '([^']+)'/gm)) {
      const other = /^(?:\.\.\/)+([a-z]+)\//.exec(from)?.[1];
      if (other && floors.includes(other) && other !== folder) found.add(other);
      else if (!from.startsWith('.')) found.add(from);
    }
  }
  return found;
}

describe('the floors of the core package', () => {
  it('are all its folders', () => {
    const folders = readdirSync(source, { withFileTypes: true })
      .filter((item) => item.isDirectory())
      .map(({ name }) => name);
    expect([...folders].sort()).toEqual([...floors].sort());
  });

  it.each(floors)('%s imports only from floors below it', (folder) => {
    const allowed = [...floors.slice(0, floors.indexOf(folder)), ...(packages[folder] ?? [])];
    expect([...importsOf(folder)].filter((name) => !allowed.includes(name))).toEqual([]);
  });
});
