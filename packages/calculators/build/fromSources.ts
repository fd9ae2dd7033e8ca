import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import { coreSource } from '../languages/translatedSources.ts';

/** Changes the text of a source file on its way into a bundle. */
export type Rewrite = (path: string, source: string) => string;

/** Bundles out of the sources of core and calculators, so that they can be rewritten on the way. */
export function fromSources(packages: string, rewrites: readonly Rewrite[]): Plugin {
  return {
    name: 'from-sources',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^@windlass\/core\/[a-z]+$/ }, ({ path }) => ({
        path: coreSource(packages, path.split('/')[2] ?? ''),
        sideEffects: false,
      }));
      onLoad({ filter: /packages.(core|calculators).src.*\.tsx?$/ }, ({ path }) => ({
        contents: rewrites.reduce(
          (source, rewrite) => rewrite(path, source),
          readFileSync(path, 'utf8'),
        ),
        loader: path.endsWith('x') ? 'tsx' : 'ts',
      }));
    },
  };
}
