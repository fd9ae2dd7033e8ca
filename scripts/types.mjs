// npm run types: the types of every package, on the built library.
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, main, root, runBin } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('calculators');
  for (const folder of [
    'packages/core',
    'packages/calculators',
    'site/offline/worker',
    'examples',
    'tests',
  ]) {
    const { status } = await runBin('tsc', ['-p', join(folder, 'tsconfig.json')]);
    if (status !== 0) process.exitCode = 1;
  }
  const site = await runBin('astro', ['check'], { cwd: join(root, 'site') });
  if (site.status !== 0) process.exitCode = 1;
});
