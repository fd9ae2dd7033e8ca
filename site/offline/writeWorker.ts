import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { packedFolders, packName, workerName } from './packed.ts';
import type { Stored } from './Stored.ts';
import { addressOf, revisionOf, type SiteFile, siteFiles } from './siteFiles.ts';

const source = fileURLToPath(new URL('worker/worker.ts', import.meta.url));

/** Writes the worker of a built site, and the file that its many small pages come in. */
export async function writeWorker(folder: string, base: string): Promise<Stored> {
  const { first, packed, inLanguage } = siteFiles(folder);
  const texts = packed.map(({ name, content }) => [addressOf(base, name), content.toString()]);
  const pack = gzipSync(JSON.stringify(Object.fromEntries(texts)), { level: 9 });
  writeFileSync(join(folder, packName), pack);

  const storedFile = ({ name, content }: SiteFile) => ({
    path: addressOf(base, name),
    revision: revisionOf(content),
  });
  const files = first.map(storedFile);
  const languages = [...inLanguage].map(([start, of]) => ({
    folder: `${base}${start}`,
    files: of.map(storedFile),
  }));
  const packFile = { path: `${base}${packName}`, revision: revisionOf(pack) };
  const stored: Stored = {
    version: revisionOf(JSON.stringify([files, languages, packFile])),
    base,
    first: files,
    languages,
    pack: packFile,
    packed: packedFolders.map((start) => `${base}${start}`),
  };
  await build({
    entryPoints: [source],
    outfile: join(folder, workerName),
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    define: { STORED: JSON.stringify(stored) },
  });
  return stored;
}
