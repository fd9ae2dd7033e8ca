// npm run evidence: predicted against observed, over every usable published row.
import { join } from 'node:path';
import { ensureInstalled, main, root, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  const file = join(root, 'tests', 'evidence', 'evidence.ts');
  process.exitCode = (await runFile(file, process.argv.slice(2))).status;
});
