import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { buildIndex } from './buildIndex.ts';
import { placesOf, withEverything } from './everythingList.ts';

/**
 * Writes what the search finds, `search/index.json`, from the pages as they were built, and the list
 * of all pages into the page of the search.
 */
export function searchIndex(base: string): AstroIntegration {
  return {
    name: 'windlass-search',
    hooks: {
      'astro:build:done': ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
          .map((name) => name.replaceAll(sep, '/'))
          .filter((name) => name.endsWith('.html'))
          .sort();
        const pages = new Map(
          names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
        );
        const index = buildIndex(pages);
        writeFileSync(join(folder, 'search', 'index.json'), JSON.stringify(index));
        const page = join(folder, 'search', 'index.html');
        const folderOfSite = base.endsWith('/') ? base : `${base}/`;
        writeFileSync(
          page,
          withEverything(readFileSync(page, 'utf8'), placesOf(index), folderOfSite),
        );
        logger.info(`${index.documentCount} places can be found`);
      },
    },
  };
}
