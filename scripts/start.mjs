// npm start: installs, builds what has changed, serves the site and opens the planner.
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, main, root, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('site');
  const result = await runFile(join(root, 'scripts', 'serve.mjs'), process.argv.slice(2));
  process.exitCode = typeof result.status === 'number' ? result.status : 0;
});
