import type MiniSearch from 'minisearch';
import type { SearchOptions, SearchResult } from 'minisearch';
import { type Group, groups, type SearchEntry } from './SearchEntry.ts';
import { termsOf } from './termsOf.ts';

/** A place that was found, with the words in it that the query meant. */
export interface Hit extends Omit<SearchEntry, 'terms'> {
  readonly matched: readonly string[];
}

/** What was found, by kind; kinds without a hit are left out. */
export interface Found {
  readonly count: number;
  /** No place has all words of the query: these have some. */
  readonly isPartly: boolean;
  readonly byGroup: readonly { readonly group: Group; readonly hits: readonly Hit[] }[];
}

/** A long word may be wrong by a letter or two, where nothing has it as it was written. */
const misspelled = (term: string) => (term.length > 3 ? 0.25 : false);

/** Tried in this order, until one finds something. */
const tries: readonly SearchOptions[] = [
  { combineWith: 'AND' },
  { combineWith: 'AND', fuzzy: misspelled },
  { combineWith: 'OR', fuzzy: misspelled },
];

/**
 * What a query finds: places with all its words, else places where they are spelled nearly so, else
 * places with some of them; the best first. What is named exactly as the query comes before
 * everything else of its kind, and its kind before the others if the query is a name in the library.
 */
export function find(index: MiniSearch<SearchEntry>, query: string): Found {
  const text = query.trim().replace(/\(\)$/, '');
  const none: Found = { count: 0, isPartly: false, byGroup: [] };
  if (termsOf(text).length === 0) return none;
  for (const [at, how] of tries.entries()) {
    const results = index.search(text, how);
    if (results.length > 0) return grouped(results.map(hitOf), query.trim(), at === 2);
  }
  return none;
}

function grouped(hits: readonly Hit[], query: string, isPartly: boolean): Found {
  const isName = hits.some((hit) => hit.group === 'reference' && isItsName(hit, query));
  const order: readonly Group[] = isName ? [...new Set<Group>(['reference', ...groups])] : groups;
  const byGroup = order
    .map((group) => ({ group, hits: namedFirst(hits, group, query) }))
    .filter((part) => part.hits.length > 0);
  return { count: hits.length, isPartly, byGroup };
}

function namedFirst(hits: readonly Hit[], group: Group, query: string): readonly Hit[] {
  const own = hits.filter((hit) => hit.group === group);
  return own.toSorted((a, b) => Number(isNamed(b, query)) - Number(isNamed(a, query)));
}

function hitOf(result: SearchResult): Hit {
  const { id, group, path, title, section, text, match } = result;
  return { id, group, path, title, section, text, matched: Object.keys(match) };
}

function isNamed({ title, section }: Hit, query: string): boolean {
  return section === '' && bare(title).toLowerCase() === bare(query).toLowerCase();
}

/** Named so, and written as only programs write it: `planSession`, `Tempo`, `kg()`. */
function isItsName(hit: Hit, query: string): boolean {
  return (
    isNamed(hit, query) &&
    (termsOf(bare(hit.title)).length > 1 || query !== query.toLowerCase() || query !== bare(query))
  );
}

function bare(name: string): string {
  return name.replace(/\(\)$/, '');
}
