import { existsSync, globSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** Sources of the packages whose doc comments carry examples, relative to the root. */
export function sourceFiles(): readonly string[] {
  return globSync('packages/*/src/**/*.{ts,tsx}', { cwd: root })
    .filter((file) => !/\.(test|testing)\.tsx?$/.test(file))
    .sort();
}

/** Pages written by hand whose `ts run` blocks are examples; the reference comes from the sources. */
export function pageFiles(): readonly string[] {
  const pages = [
    'README.md',
    'DEVELOPERS.md',
    'site/src/content/{guides,developers}/**/*.{md,mdx}',
  ];
  return globSync(pages, { cwd: root }).sort();
}

/** The entries of the core package: each folder, and the package itself where it has one. */
export function coreEntries(): readonly { readonly name: string; readonly file: string }[] {
  const folder = join(root, 'packages/core/src');
  const folders = readdirSync(folder, { withFileTypes: true })
    .filter((item) => item.isDirectory())
    .map(({ name }) => ({ name: `@windlass/core/${name}`, file: join(folder, name, 'index.ts') }));
  return [{ name: '@windlass/core', file: join(folder, 'index.ts') }, ...folders].filter((entry) =>
    existsSync(entry.file),
  );
}
