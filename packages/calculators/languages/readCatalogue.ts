import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalogue } from './translate.ts';

/** The languages besides English: a folder here each, with any number of JSON files of texts. */
export const languages = ['de'] as const;

export type LanguageId = (typeof languages)[number];

/** All translations of a language below `packages`, the folder of the packages. Throws on a text that is translated twice, and differently. */
export function readCatalogue(packages: string, language: LanguageId): Catalogue {
  const home = join(packages, 'calculators', 'languages', language);
  const catalogue = new Map<string, string>();
  for (const file of readdirSync(home).filter((name) => name.endsWith('.json'))) {
    const texts: Record<string, string> = JSON.parse(readFileSync(join(home, file), 'utf8'));
    for (const [text, translation] of Object.entries(texts)) {
      const before = catalogue.get(text);
      if (before !== undefined && before !== translation) {
        throw new RangeError(`${file} translates "${text}" otherwise than another file does`);
      }
      catalogue.set(text, translation);
    }
  }
  return catalogue;
}
