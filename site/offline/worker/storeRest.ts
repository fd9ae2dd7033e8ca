import { cacheName, stored } from './stored.ts';
import { keptAt } from './storeFirst.ts';
import { take } from './take.ts';

const types: readonly (readonly [ending: string, type: string])[] = [
  ['.json', 'application/json'],
  ['', 'text/html;charset=utf-8'],
];

/** Puts the pages of the pack into the cache, each at its own address. Does nothing the second time. */
export async function storeRest(): Promise<void> {
  const { path } = stored.pack;
  if (await keptAt(path)) return;
  await take(stored.pack);
  const cache = await caches.open(cacheName);
  const pack = await cache.match(path);
  if (!pack?.body) return;
  try {
    const json = pack.body.pipeThrough(new DecompressionStream('gzip'));
    const pages: Readonly<Record<string, string>> = await new Response(json).json();
    for (const [address, text] of Object.entries(pages))
      await cache.put(address, page(address, text, pack));
  } catch (error) {
    await cache.delete(path);
    throw error;
  }
}

/** A page as the host would have sent it: with the headers that it sends with every file. */
function page(address: string, text: string, pack: Response): Response {
  const headers = new Headers(pack.headers);
  for (const name of ['content-encoding', 'content-length', 'etag', 'last-modified'])
    headers.delete(name);
  headers.set('content-type', types.find(([ending]) => address.endsWith(ending))?.[1] ?? '');
  return new Response(text, { headers });
}
