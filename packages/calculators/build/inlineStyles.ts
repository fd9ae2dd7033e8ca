import { type BuildOptions, build, type Plugin } from 'esbuild';
import { ownRem } from './ownRem.ts';

/** The bundled style sheet. */
export const styles: BuildOptions = {
  entryPoints: ['src/ui/styles.css'],
  bundle: true,
  minify: true,
};

/** `element.css?inline` is the style sheet of the custom element as text. */
export const inlineStyles: Plugin = {
  name: 'inline-styles',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\.css\?inline$/ }, () => ({ path: 'styles', namespace: 'inline-css' }));
    onLoad({ filter: /.*/, namespace: 'inline-css' }, async () => {
      const entryPoints = ['src/ui/element.css'];
      const { outputFiles } = await build({ ...styles, entryPoints, write: false });
      return { contents: ownRem(outputFiles[0]?.text ?? ''), loader: 'text' };
    });
  },
};
