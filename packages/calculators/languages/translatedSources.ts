import { join } from 'node:path';
import type { LanguageId } from './readCatalogue.ts';
import { type Catalogue, translate } from './translate.ts';

/** Where the core of a translated bundle comes from: its sources, since what is built is English. */
export function coreSource(packages: string, entry: string): string {
  return join(packages, 'core', 'src', entry, 'index.ts');
}

/** Puts the texts of a source into another language. */
export function rewritten(
  language: LanguageId,
  catalogue: Catalogue,
): (path: string, source: string) => string {
  return (path, source) => inLanguage(language, path, translate(path, source, catalogue));
}

/** `language.ts` names the language itself. */
export function inLanguage(language: LanguageId, path: string, source: string): string {
  return /[\\/]language\.ts$/.test(path) ? source.replaceAll("'en-GB'", `'${language}'`) : source;
}
