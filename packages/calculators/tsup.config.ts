import { type BuildOptions, build, type Plugin } from 'esbuild';
import { defineConfig } from 'tsup';

const styles: BuildOptions = { entryPoints: ['src/ui/styles.css'], bundle: true, minify: true };

/** `styles.css?inline` is the bundled style sheet as text, for the custom element. */
const inlineStyles: Plugin = {
  name: 'inline-styles',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\.css\?inline$/ }, () => ({ path: 'styles', namespace: 'inline-css' }));
    onLoad({ filter: /.*/, namespace: 'inline-css' }, async () => {
      const { outputFiles } = await build({ ...styles, write: false });
      return { contents: outputFiles?.[0]?.text ?? '', loader: 'text' };
    });
  },
};

export default defineConfig({
  entry: ['src/index.ts', 'src/hydrate.tsx', 'src/element.tsx'],
  format: 'esm',
  target: 'es2023',
  dts: true,
  clean: true,
  splitting: true,
  treeshake: true,
  external: [/^@windlass\/core/, /^preact/],
  esbuildPlugins: [inlineStyles],
  onSuccess: async () => {
    await build({ ...styles, outfile: 'dist/styles.css' });
  },
});
