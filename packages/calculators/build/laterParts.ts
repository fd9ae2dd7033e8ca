import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Plugin } from 'esbuild';
import { LATER } from './laterTexts.ts';

/**
 * Files that are needed only below an answer: reasons, details and code of a calculator, and the
 * part of the frame that shows them.
 */
const IMPORT = /import \{ (\w+) \} from '(\.\/(?:snippet|details|why|whyOf|More)\.tsx?)';/g;

/** The functions that a file takes from such files, and where they are. */
function partsOf(file: string): readonly { readonly name: string; readonly from: string }[] {
  return [...readFileSync(file, 'utf8').matchAll(IMPORT)].map(([, name, from]) => ({
    name: name ?? '',
    from: from ?? '',
  }));
}

/** The entry of what is fetched later: those functions, as one module. */
export function laterEntry(file: string): string {
  return partsOf(file)
    .map(
      ({ name, from }) => `export { ${name} } from ${JSON.stringify(join(dirname(file), from))};`,
    )
    .join('\n');
}

/**
 * Leaves what is needed later out of a bundle, which fetches it from `address`. Until it is there,
 * each of its functions gives `null`.
 */
export function laterApart(file: string, address: string): Plugin {
  const parts = partsOf(file);
  const resolveDir = dirname(file);
  return {
    name: 'later-apart',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^\.\/(snippet|details|why|whyOf|More)\.tsx?$/ }, ({ path, importer }) =>
        importer === file ? { path, namespace: 'later-part', sideEffects: false } : undefined,
      );
      onLoad({ filter: /.*/, namespace: 'later-part' }, ({ path }) => ({
        contents: parts
          .filter(({ from }) => from === path)
          .map(({ name }) => `export const ${name} = (...given) => part('${name}', given);`)
          .concat(`import { part } from '${LATER}';`)
          .join('\n'),
        resolveDir,
      }));
      onResolve({ filter: new RegExp(`^${LATER}$`) }, ({ path }) => ({ path, namespace: 'later' }));
      onLoad({ filter: /.*/, namespace: 'later' }, () => ({ contents: runtime(address) }));
      onResolve({ filter: new RegExp(`^${address}$`) }, ({ path }) => ({ path, external: true }));
      onLoad({ filter: /contract.fetch(Rest|Frame)\.ts$/ }, () => ({
        contents: `export { fetchRest, fetchRest as fetchFrame } from '${LATER}';`,
        resolveDir,
      }));
    },
  };
}

/** The module that the bundle asks, and that fetches the rest. */
const runtime = (address: string) => `
let rest = { texts: {} };
export const later = (number) => rest.texts[number] ?? '';
export const part = (name, given) => rest[name]?.(...given) ?? null;
export const fetchRest = async () => { rest = await import('${address}'); };
`;
