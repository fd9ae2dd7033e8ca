// npm run lighthouse: what Lighthouse says about pages of the built site on a phone, and how soon a key is shown.
import { ensureBuilt, ensureInstalled, main, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('site');
  const paths = process.argv.slice(2);
  const runs = paths.length > 0 ? ['run'] : ['run', 'frames'];
  for (const run of runs) {
    const { status } = await runFile(`tests/lighthouse/${run}.ts`, paths);
    if (status !== 0) process.exitCode = typeof status === 'number' ? status : 1;
  }
});
