import MiniSearch from 'minisearch';
import { indexOptions } from './indexOptions.ts';
import type { SearchEntry } from './SearchEntry.ts';

let loaded: Promise<MiniSearch<SearchEntry>> | undefined;

/** The index, fetched when it is first asked for; asked for again after it could not be fetched. */
export function loadIndex(base: string): Promise<MiniSearch<SearchEntry>> {
  loaded ??= fetchIndex(`${base}search/index.json`).catch((error: unknown) => {
    loaded = undefined;
    throw error;
  });
  return loaded;
}

async function fetchIndex(address: string): Promise<MiniSearch<SearchEntry>> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return MiniSearch.loadJSONAsync<SearchEntry>(await response.text(), indexOptions);
}
