import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { type LanguageId, readCatalogue } from './readCatalogue.ts';
import { translate } from './translate.ts';

/** Where the core of a translated bundle comes from: its sources, since what is built is English. */
export function coreSource(packages: string, entry: string): string {
  return join(packages, 'core', 'src', entry, 'index.ts');
}

/** Makes a bundle in another language out of the sources of core and calculators. */
export function translatedSources(packages: string, language: LanguageId): Plugin {
  const catalogue = readCatalogue(packages, language);
  return {
    name: `translated-${language}`,
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^@windlass\/core\/[a-z]+$/ }, ({ path }) => ({
        path: coreSource(packages, path.split('/')[2] ?? ''),
        sideEffects: false,
      }));
      onLoad({ filter: /packages.(core|calculators).src.*\.tsx?$/ }, ({ path }) => ({
        contents: inLanguage(
          language,
          path,
          translate(path, readFileSync(path, 'utf8'), catalogue),
        ),
        loader: path.endsWith('x') ? 'tsx' : 'ts',
      }));
    },
  };
}

/** `language.ts` names the language itself. */
export function inLanguage(language: LanguageId, path: string, source: string): string {
  return /[\\/]language\.ts$/.test(path) ? source.replaceAll("'en-GB'", `'${language}'`) : source;
}
