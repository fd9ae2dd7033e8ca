import type { Options } from 'minisearch';
import type { SearchEntry } from './SearchEntry.ts';
import { termsOf } from './termsOf.ts';

/** How the index is made and read: both must agree. */
export const indexOptions: Options<SearchEntry> = {
  fields: ['title', 'section', 'terms', 'text'],
  storeFields: ['group', 'path', 'title', 'section', 'text'],
  tokenize: termsOf,
  processTerm: (term) => term.toLowerCase(),
  searchOptions: {
    boost: { title: 6, section: 4, terms: 2 },
    // A word may be half written; one or two letters count as that only by themselves.
    prefix: (term, _at, terms) => term.length > 2 || terms.length === 1,
    maxFuzzy: 2,
    weights: { fuzzy: 0.3, prefix: 0.6 },
  },
};
