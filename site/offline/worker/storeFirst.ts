import { cacheName, stored } from './stored.ts';
import { take } from './take.ts';

/** Files fetched at a time, so that a page being read is not kept waiting. */
const AT_A_TIME = 6;

/** Puts all files of this version into its cache. One that is missing fails the whole. */
export async function storeFirst(): Promise<void> {
  const waiting = [...stored.first];
  const lanes = Array.from({ length: AT_A_TIME }, async () => {
    for (let file = waiting.shift(); file; file = waiting.shift()) await take(file);
  });
  await Promise.all(lanes);
}

/** What this version keeps at an address. */
export async function keptAt(path: string): Promise<Response | undefined> {
  return (await caches.open(cacheName)).match(path);
}
