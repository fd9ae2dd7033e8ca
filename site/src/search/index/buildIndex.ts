import MiniSearch from 'minisearch';
import { indexOptions } from '../indexOptions.ts';
import type { SearchEntry } from '../SearchEntry.ts';
import { pageEntries } from './pageEntries.ts';
import { toolEntries } from './toolEntries.ts';

/** Pages that say that something is missing, this search, tools, which come from their definitions, and other languages. */
const LEFT_OUT = /^(404\.html|offline\/|search\/|tools\/.+|[a-z]{2}\/)/;

/** The index over the tools and all pages of a built site, by file: `tools/index.html` to its HTML. */
export function buildIndex(pages: ReadonlyMap<string, string>): MiniSearch<SearchEntry> {
  const found = [...pages]
    .map(([file, html]) => ({ path: file.replace(/index\.html$/, ''), html }))
    .filter(({ path }) => !LEFT_OUT.test(path))
    .flatMap(({ path, html }) => pageEntries(path, html));
  const index = new MiniSearch(indexOptions);
  index.addAll([...toolEntries(), ...found].map((entry, id) => ({ id, ...entry })));
  return index;
}
