import { type BuildOptions, build, type Plugin } from 'esbuild';

/** The bundled style sheet. */
export const styles: BuildOptions = {
  entryPoints: ['src/ui/styles.css'],
  bundle: true,
  minify: true,
};

/** `styles.css?inline` is the bundled style sheet as text, for the custom element. */
export const inlineStyles: Plugin = {
  name: 'inline-styles',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\.css\?inline$/ }, () => ({ path: 'styles', namespace: 'inline-css' }));
    onLoad({ filter: /.*/, namespace: 'inline-css' }, async () => {
      const { outputFiles } = await build({ ...styles, write: false });
      return { contents: outputFiles[0]?.text ?? '', loader: 'text' };
    });
  },
};
