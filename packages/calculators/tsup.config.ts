import { join } from 'node:path';
import { build } from 'esbuild';
import { defineConfig, type Options } from 'tsup';
import { browserEntries } from './build/browserEntries.ts';
import { fromSources } from './build/fromSources.ts';
import { styles } from './build/inlineStyles.ts';
import { type LanguageId, languages, readCatalogue } from './languages/readCatalogue.ts';
import { rewritten } from './languages/translatedSources.ts';

const packages = join(process.cwd(), '..');

const shared = {
  format: 'esm',
  target: 'es2023',
  treeshake: true,
  external: [/^preact/],
} satisfies Options;

/** For tools and for rendering: everything at once, the core beside it. */
const whole: Options = {
  ...shared,
  entry: ['src/index.ts', 'src/ui/index.ts', 'src/live/index.ts'],
  external: [/^@windlass\/core/, /^preact/],
  dts: {
    entry: [
      'src/index.ts',
      'src/ui/index.ts',
      'src/live/index.ts',
      'src/hydrate.tsx',
      'src/element.tsx',
    ],
  },
  onSuccess: async () => {
    await build({ ...styles, outfile: 'dist/styles.css' });
  },
};

/** Everything again in another language, made from the sources of the core too. */
async function translated(language: LanguageId): Promise<Options[]> {
  const catalogue = readCatalogue(packages, language);
  const rewrites = [rewritten(language, catalogue)];
  const outDir = `dist/${language}`;
  const all: Options = {
    ...shared,
    outDir,
    entry: ['src/index.ts'],
    noExternal: [/^@windlass\/core/],
    splitting: false,
    esbuildPlugins: [fromSources(packages, rewrites)],
  };
  return [all, ...(await browserEntries({ outDir, catalogue, rewrites }))];
}

export default defineConfig(async () => [
  whole,
  ...(await browserEntries({ outDir: 'dist' })),
  ...(await Promise.all(languages.map(translated))).flat(),
]);
