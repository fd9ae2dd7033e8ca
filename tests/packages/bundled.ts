import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build as esbuild } from 'esbuild';
import { build as vite } from 'vite';
import { run } from './run.ts';

/** One function of the core costs an application no more than this, gzipped. */
const MOST_BYTES = 1000;

/** Bundles one function as an application would: it comes alone, and runs without the packages. */
export async function bundleOneFunction(consumer: string): Promise<void> {
  const { outputFiles } = await esbuild({
    entryPoints: [join(consumer, 'bundle.ts')],
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
  });
  const bytes = gzipSync(outputFiles[0]?.contents ?? '').length;
  if (bytes > MOST_BYTES)
    throw new Error(`one function costs ${bytes} bytes, ${MOST_BYTES} allowed`);
  const printed = run(
    process.execPath,
    ['--input-type=module', '-e', outputFiles[0]?.text ?? ''],
    consumer,
  );
  // 20 kg / 0.45359237 kg, by hand.
  if (!printed.startsWith('44.0924524')) throw new Error(`20 kg are ${printed} lb`);
}

/** Bundles a whole program with Vite and runs it where no package is installed. */
export async function bundleWithVite(consumer: string, elsewhere: string): Promise<void> {
  await vite({
    root: consumer,
    logLevel: 'silent',
    configFile: false,
    build: {
      outDir: elsewhere,
      emptyOutDir: true,
      lib: { entry: join(consumer, 'plan.ts'), formats: ['es'], fileName: () => 'plan.mjs' },
    },
  });
  const bundle = join(elsewhere, 'plan.mjs');
  if (!existsSync(bundle)) throw new Error('no bundle was written');
  run(process.execPath, [bundle], elsewhere);
  rmSync(elsewhere, { recursive: true });
}
