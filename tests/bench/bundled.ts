import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';

const resolveDir = fileURLToPath(new URL('..', import.meta.url));

/** Bytes after gzip of this code with all that it imports, as a bundler gives it to a browser. */
export async function bundledBytes(code: string, plugins: Plugin[] = []): Promise<number> {
  const result = await build({
    stdin: { contents: code, resolveDir },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
    logLevel: 'error',
    write: false,
    plugins,
  });
  return gzipSync(result.outputFiles[0]?.contents ?? '', { level: 9 }).length;
}
