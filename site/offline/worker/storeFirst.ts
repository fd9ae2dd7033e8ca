import type { StoredFile } from '../Stored.ts';
import { cacheName, otherCaches, stored } from './stored.ts';
import { take } from './take.ts';

/** Files fetched at a time, so that a page being read is not kept waiting. */
const AT_A_TIME = 6;

/**
 * Puts the files of this version into its cache, those of other languages where an earlier version
 * had them. One that is missing fails the whole.
 */
export async function storeFirst(): Promise<void> {
  const kept = await Promise.all(
    stored.languages.map(async ({ folder, files }) => ((await wasKept(folder)) ? files : [])),
  );
  await takeAll([...stored.first, ...kept.flat()]);
}

/** Puts the files of a language into the cache. Does nothing for a folder without one. */
export async function storeLanguage(folder: string): Promise<void> {
  const language = stored.languages.find((one) => one.folder === folder);
  if (language) await takeAll(language.files);
}

async function takeAll(files: readonly StoredFile[]): Promise<void> {
  const waiting = [...files];
  const lanes = Array.from({ length: AT_A_TIME }, async () => {
    for (let file = waiting.shift(); file; file = waiting.shift()) await take(file);
  });
  await Promise.all(lanes);
}

async function wasKept(path: string): Promise<boolean> {
  const earlier = await otherCaches();
  const found = await Promise.all(
    earlier.map(async (name) => (await caches.open(name)).match(path)),
  );
  return found.some((response) => response !== undefined);
}

/** What this version keeps at an address. */
export async function keptAt(path: string): Promise<Response | undefined> {
  return (await caches.open(cacheName)).match(path);
}
