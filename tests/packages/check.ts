// Packs both packages and meets them as their users do: in Node, in bundlers, in a browser without
// one, and in TypeScript, from a project outside the workspace that installs the tarballs.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleOneFunction, bundleWithVite } from './bundled.ts';
import { meetInBrowser } from './inBrowser.ts';
import { lintTarball, requireTypes } from './lintTarball.ts';
import { hasFailed, judge } from './report.ts';
import { run } from './run.ts';

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(dirname(here));
const { config } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const scratch = mkdtempSync(join(tmpdir(), 'windlass-packages-'));
const consumer = join(scratch, 'consumer');

try {
  const core = await packed('core');
  const calculators = await packed('calculators');
  cpSync(join(here, 'consumer'), consumer, { recursive: true });
  writeFileSync(
    join(consumer, 'package.json'),
    JSON.stringify({
      name: 'consumer',
      private: true,
      type: 'module',
      dependencies: { '@windlass/core': core, '@windlass/calculators': calculators },
      overrides: { '@windlass/core': core },
    }),
  );
  await judge('consumer: installs', () => {
    run('npm', ['install', '--no-audit', '--no-fund', '--silent'], consumer);
  });
  for (const resolution of ['nodenext', 'bundler']) {
    await judge(`consumer: compiles with module resolution ${resolution}`, () => {
      run(join(root, 'node_modules/.bin/tsc'), ['-p', `tsconfig.${resolution}.json`], consumer);
    });
  }
  await judge('consumer: runs in Node', () => {
    run(process.execPath, ['plan.ts'], consumer);
  });
  await judge('consumer: takes one function alone with esbuild', () => bundleOneFunction(consumer));
  await judge('consumer: runs bundled by Vite', () =>
    bundleWithVite(consumer, join(scratch, 'bundled')),
  );
  await judge('consumer: runs in a browser by import map', () => meetInBrowser(consumer));
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
process.exitCode = hasFailed() ? 1 : 0;

/** Packs one of the packages, lints the tarball, and gives it as a dependency of the consumer. */
async function packed(name: string): Promise<string> {
  const folder = join(root, 'packages', name);
  const to = join(scratch, name);
  run('npx', ['--yes', `pnpm@${config.pnpm}`, 'pack', '--pack-destination', to], folder);
  const [file = ''] = readdirSync(to);
  const tarball = join(to, file);
  await judge(`${name}: publint`, () => lintTarball(tarball));
  await judge(`${name}: types resolve`, () => requireTypes(tarball, root, folder));
  return `file:../${name}/${file}`;
}
