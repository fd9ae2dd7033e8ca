import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { languages } from '../../packages/calculators/languages/readCatalogue.ts';
import { packedFolders, packName, workerName } from './packed.ts';

/** A file of the built site. */
export interface SiteFile {
  /** Inside the site: `tools/index.html`. */
  readonly name: string;
  readonly content: Buffer;
}

/** The files that a device keeps, by when it does. */
export interface SiteFiles {
  readonly first: readonly SiteFile[];
  readonly packed: readonly SiteFile[];
  /** By the folder of the language: `de/`. */
  readonly inLanguage: ReadonlyMap<string, readonly SiteFile[]>;
}

/** What machines read and no visitor opens: site maps, and texts for language models. */
const FOR_MACHINES = /^(?:sitemap-|llms)/;

/** The files that a device keeps. */
export function siteFiles(folder: string): SiteFiles {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.replaceAll(sep, '/'))
    .filter((name) => name !== packName && name !== workerName && !FOR_MACHINES.test(name))
    .sort();
  const files = names.map((name) => ({ name, content: readFileSync(join(folder, name)) }));
  const inLanguage = new Map(
    languages.map((id) => [`${id}/`, files.filter(({ name }) => name.startsWith(`${id}/`))]),
  );
  const apart = [...packedFolders, ...inLanguage.keys()];
  return {
    first: files.filter(({ name }) => !apart.some((start) => name.startsWith(start))),
    packed: files.filter(({ name }) => packedFolders.some((start) => name.startsWith(start))),
    inLanguage,
  };
}

/** The address of a file: that of its folder for the page of a folder. */
export function addressOf(base: string, name: string): string {
  return `${base}${name.replace(/(^|\/)index\.html$/, '$1')}`;
}

/** A mark that changes with the content. */
export function revisionOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('base64url').slice(0, 12);
}
