import { cacheName, otherCaches, stored } from './stored.ts';

/** Kept in the cache of a version that has been in use, and not only fetched. */
const used = `${stored.base}windlass-used`;

/**
 * Marks this version as in use and deletes what others kept, but for the one that was in use
 * before: pages opened with it may still be open, and go on to ask for its files.
 */
export async function forgetOlder(): Promise<void> {
  await (await caches.open(cacheName)).put(used, new Response());
  const others = await otherCaches();
  const marks = await Promise.all(
    others.map(async (name) => (await caches.open(name)).match(used)),
  );
  const before = others.findLast((_, at) => marks[at]);
  await Promise.all(others.filter((name) => name !== before).map((name) => caches.delete(name)));
}
