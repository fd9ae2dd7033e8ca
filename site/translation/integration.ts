import { cpSync, existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { languages } from '../../packages/calculators/languages/readCatalogue.ts';
import { isTranslated } from '../src/lib/translated.ts';

/** Where a translated site is built before it becomes a folder of the whole one. */
export const translatedFolder = (language: string) => `./.cache/${language}`;

/** Leaves out the pages that are in English only; links to them lead there. */
export function onlyTranslated(): AstroIntegration {
  return {
    name: 'windlass-only-translated',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        for (const { name } of readdirSync(folder, { withFileTypes: true })) {
          const isKept = name === 'index.html' || name === 'assets' || isTranslated(`/${name}`);
          if (!isKept) rmSync(join(folder, name), { recursive: true });
        }
      },
    },
  };
}

/** Puts the translated sites, which are built before, into the whole one. */
export function withTranslations(): AstroIntegration {
  return {
    name: 'windlass-translations',
    hooks: {
      'astro:build:done': ({ dir }) => {
        for (const language of languages) {
          const built = fileURLToPath(new URL(`../${translatedFolder(language)}`, import.meta.url));
          if (!existsSync(built)) throw new Error(`Build the site in ${language} first.`);
          cpSync(built, join(fileURLToPath(dir), language), { recursive: true });
        }
      },
    },
  };
}
