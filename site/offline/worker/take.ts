import { isNamedByContent, type StoredFile } from '../Stored.ts';
import { cacheName, otherCaches } from './stored.ts';

/** Header of a kept file that says which content it is. */
const REVISION = 'windlass-revision';

/** Puts a file into the cache of this version: from an earlier version where it is the same there. */
export async function take(file: StoredFile): Promise<void> {
  const cache = await caches.open(cacheName);
  if (await isThere(cache, file)) return;
  await cache.put(file.path, (await fromEarlier(file)) ?? (await fetched(file)));
}

async function isThere(cache: Cache, { path, revision }: StoredFile): Promise<boolean> {
  return (await cache.match(path))?.headers.get(REVISION) === revision;
}

async function fromEarlier({ path, revision }: StoredFile): Promise<Response | undefined> {
  for (const name of (await otherCaches()).toReversed()) {
    const kept = await (await caches.open(name)).match(path);
    if (kept?.headers.get(REVISION) === revision) return kept;
  }
  return undefined;
}

/** Asked of the host again, unless the name of the file changes with its content. */
async function fetched({ path, revision }: StoredFile): Promise<Response> {
  const response = await fetch(path, { cache: isNamedByContent(path) ? 'default' : 'no-cache' });
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  const headers = new Headers(response.headers);
  headers.set(REVISION, revision);
  return new Response(response.body, { headers });
}
