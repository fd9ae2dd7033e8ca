import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { pageFaults } from './pageFaults.ts';

/** Fails a build whose pages have broken links, ids given twice, or parts the security policy refuses. */
export function checkedPages(base: string): AstroIntegration {
  return {
    name: 'windlass-checked-pages',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) =>
          file.replaceAll(sep, '/'),
        );
        const pages = files.filter((file) => file.endsWith('.html'));
        const faults = pageFaults(
          new Map(pages.map((file) => [file, readFileSync(join(folder, file), 'utf8')])),
          new Set(files),
          base.endsWith('/') ? base : `${base}/`,
        );
        if (faults.length > 0) throw new Error(`Pages have faults:\n${faults.join('\n')}`);
      },
    },
  };
}
