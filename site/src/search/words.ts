import type { Group } from './SearchEntry.ts';

/** Every word of the search. */
export const words = {
  title: 'Search',
  description: 'Search all tools, guides and pages for developers; and every page by name.',
  label: 'Search the site',
  placeholder: 'Search',
  help: 'A question, a word of the trade, or a name from the library.',
  groups: {
    tools: 'Tools',
    guides: 'Guides',
    pages: 'Pages',
    reference: 'Reference',
  } satisfies Record<Group, string>,
  fetching: 'Fetching what can be found…',
  failed: 'The search could not be fetched. See to the connection and write once more.',
  found: (count: number, query: string) =>
    `${count} ${count === 1 ? 'place has' : 'places have'} “${query}”.`,
  nearly: (count: number, query: string) =>
    `Nothing has all of “${query}”. ${count} ${count === 1 ? 'place has' : 'places have'} a part of it.`,
  nothing: (query: string) => `Nothing has “${query}”.`,
  tryThis: 'Try one word of it, a word of the trade such as',
  tryThese: ['tempo', 'warm-up', 'plates', 'elbow', 'failure'],
  orBelow: ', or choose from everything below.',
  orAllBefore: ', or look at',
  orAll: 'everything there is',
  showAll: (count: number, group: string) => `All ${count} in ${group}`,
  allResults: 'All of it on one page',
  everything: 'Everything there is',
  referenceOf: 'Reference, by entry',
  keyboard: 'Keyboard',
  key: 'The key / goes to the search field.',
};
