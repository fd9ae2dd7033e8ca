import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { defineConfig, type Options } from 'tsup';
import { type LanguageId, languages } from './languages/readCatalogue.ts';
import { translatedSources } from './languages/translatedSources.ts';

const styles: BuildOptions = { entryPoints: ['src/ui/styles.css'], bundle: true, minify: true };

const ids = readdirSync('src', { withFileTypes: true, recursive: true })
  .filter(({ name }) => name === 'definition.ts')
  .map(({ parentPath }) => parentPath.replace(/^src./, ''));

/** `styles.css?inline` is the bundled style sheet as text, for the custom element. */
const inlineStyles: Plugin = {
  name: 'inline-styles',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\.css\?inline$/ }, () => ({ path: 'styles', namespace: 'inline-css' }));
    onLoad({ filter: /.*/, namespace: 'inline-css' }, async () => {
      const { outputFiles } = await build({ ...styles, write: false });
      return { contents: outputFiles[0]?.text ?? '', loader: 'text' };
    });
  },
};

/** In a browser entry each calculator stays a file of its own, fetched when it is needed. */
const calculatorsApart: Plugin = {
  name: 'calculators-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/[a-z-]+\/definition\.ts$/ }, ({ path }) => ({
      path: path.replace('./', './calculators/').replace('/definition.ts', '.js'),
      external: true,
    }));
  },
};

/** What a calculator fetches only when it is asked for stays a file of its own, too. */
const fetchedLater = { 'past-failure-live': 'src/past-failure/live/LiveDialog.tsx' } as const;

const laterApart: Plugin = {
  name: 'later-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/live\/LiveDialog\.tsx$/ }, () => ({
      path: './past-failure-live.js',
      external: true,
    }));
  },
};

/** What is worked out while building comes to browsers as plain data. */
const workedOut: Plugin = {
  name: 'worked-out',
  setup({ onLoad }) {
    onLoad({ filter: /src.precomputed.\w+\.ts$/ }, async ({ path }) => {
      const values: Record<string, unknown> = await import(pathToFileURL(path).href);
      const lines = Object.entries(values).map(
        ([name, value]) => `export const ${name} = ${JSON.stringify(value)};`,
      );
      return { contents: lines.join('\n'), loader: 'js' };
    });
  },
};

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

/**
 * For browsers: what a page needs and no more. The core is inside, because chunks that several
 * calculators share would hold what any one of them needs.
 */
const forBrowsers: Options = {
  ...shared,
  noExternal: [/^@windlass\/core/],
  splitting: false,
};

/** What browsers fetch, in one language; the core is inside. */
function browserEntries(plugins: readonly Plugin[] = []): Options[] {
  return [
    {
      ...forBrowsers,
      entry: ['src/hydrate.tsx', 'src/element.tsx'],
      esbuildPlugins: [inlineStyles, calculatorsApart, ...plugins],
    },
    {
      ...forBrowsers,
      entry: Object.fromEntries([
        ...ids.map((id) => [`calculators/${id}`, `src/${id}/definition.ts`]),
        ...Object.entries(fetchedLater).map(([name, file]) => [`calculators/${name}`, file]),
      ]),
      esbuildPlugins: [laterApart, workedOut, ...plugins],
    },
  ];
}

/** Everything again in another language: `dist/de/index.js`, made from the sources of the core too. */
function translated(language: LanguageId): Options[] {
  const plugins = [translatedSources(join(process.cwd(), '..'), language)];
  const all: Options = { ...forBrowsers, entry: whole.entry ?? [], esbuildPlugins: plugins };
  return [all, ...browserEntries(plugins)].map((options) => ({
    ...options,
    outDir: `dist/${language}`,
  }));
}

export default defineConfig([whole, ...browserEntries(), ...languages.flatMap(translated)]);
