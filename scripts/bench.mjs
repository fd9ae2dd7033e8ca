// npm run bench: speed beside independent solvers, plans a second, sizes; against a baseline.
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, main, root, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('core');
  const file = join(root, 'tests', 'bench', 'runBenches.ts');
  process.exitCode = (await runFile(file, process.argv.slice(2))).status;
});
