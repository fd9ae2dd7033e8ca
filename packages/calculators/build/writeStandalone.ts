import { join } from 'node:path';
import { build } from 'esbuild';

/**
 * Writes the custom element with all that it needs, for pages without a bundler: one file to name
 * in a page, and those that it fetches, in a folder that can be put anywhere.
 */
export async function writeStandalone(outDir: string): Promise<void> {
  await build({
    entryPoints: { windlass: join(outDir, 'element.js') },
    outdir: join(outDir, 'standalone'),
    bundle: true,
    splitting: true,
    minify: true,
    format: 'esm',
    target: 'es2023',
    chunkNames: '[name]-[hash]',
  });
}

/** Calls `then` once it has been called so many times itself. */
export function countdown(times: number, then: () => Promise<void>): () => Promise<void> {
  let left = times;
  return async () => {
    left -= 1;
    if (left === 0) await then();
  };
}
