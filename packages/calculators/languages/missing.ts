import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { messagesIn } from './messagesIn.ts';
import type { Catalogue } from './translate.ts';

/** The sources whose texts come to the pages that every language has. */
const translated = [
  'packages/core/src/**/*.ts',
  'packages/calculators/src/**/*.{ts,tsx}',
  'site/offline/words.ts',
  'site/src/words.ts',
  'site/src/{planner,floor,people,storage,guides}/**/*.{ts,tsx}',
];

/** Every text that a translation is to have, with the files that it stands in. */
export function textsToTranslate(root: string): ReadonlyMap<string, readonly string[]> {
  const texts = new Map<string, string[]>();
  for (const path of globSync(translated, { cwd: root }).sort()) {
    for (const { text } of messagesIn(path, readFileSync(join(root, path), 'utf8'))) {
      const places = texts.get(text) ?? [];
      texts.set(text, places.includes(path) ? places : [...places, path]);
    }
  }
  return texts;
}

/** What is wrong with a catalogue: texts without translation, and translations with other values. */
export function catalogueFaults(root: string, catalogue: Catalogue): readonly string[] {
  const texts = textsToTranslate(root);
  const missing = [...texts].filter(([text]) => !catalogue.has(text));
  const valuesOf = (text: string) => [...new Set(text.match(/\{\d+\}/g) ?? [])].sort().join();
  const wrong = [...catalogue].filter(
    ([text, said]) => texts.has(text) && valuesOf(text) !== valuesOf(said),
  );
  const unused = [...catalogue.keys()].filter((text) => !texts.has(text));
  return [
    ...missing.map(([text, places]) => `not translated: ${JSON.stringify(text)} (${places[0]})`),
    ...wrong.map(([text]) => `other values: ${JSON.stringify(text)}`),
    ...unused.map((text) => `stands nowhere: ${JSON.stringify(text)}`),
  ];
}
