import type { Stored } from '../Stored.ts';

/** Put in by the build: the files of this version. */
declare const STORED: Stored;

/** The files of this version of the site. */
export const stored: Stored = STORED;

/** The cache of this version. Each version has its own, so that an open page keeps its files. */
export const cacheName = `windlass ${stored.base} ${stored.version}`;

/** The caches of this site's other versions, oldest first. Another site of this host has its own. */
export async function otherCaches(): Promise<readonly string[]> {
  const names = await caches.keys();
  return names.filter((name) => name.startsWith(`windlass ${stored.base} `) && name !== cacheName);
}
