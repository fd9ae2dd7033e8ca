import { readdirSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import { defineConfig, type Options } from 'tsup';

const folders = readdirSync('src', { withFileTypes: true })
  .filter((item) => item.isDirectory())
  .map((item) => item.name);
const entries = {
  index: 'src/index.ts',
  ...Object.fromEntries(folders.map((name) => [`${name}/index`, `src/${name}/index.ts`])),
};

/** Leaves every module a file of its own, under the name that its built file has. */
const apart: Plugin = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /^\.{1,2}\/.*\.ts$/ }, ({ path, kind }) =>
      kind === 'entry-point' ? null : { path: path.replace(/\.ts$/, '.js'), external: true },
    );
  },
};

const shared = { format: 'esm', target: 'es2023', clean: true } satisfies Options;

export default defineConfig([
  {
    // For bundlers: what nobody imports is left out file by file, with all that it would load.
    ...shared,
    outDir: 'dist/modules',
    entry: ['src/**/*.ts', '!src/**/*.{test,testing}.ts', '!src/**/oracle/**'],
    esbuildPlugins: [apart],
    dts: { entry: entries },
  },
  {
    // For Node and for import maps: few files to open.
    ...shared,
    outDir: 'dist/bundled',
    entry: entries,
    splitting: true,
    treeshake: true,
  },
]);
