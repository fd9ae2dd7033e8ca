// npm run lighthouse: what Lighthouse says about pages of the built site on a phone.
import { ensureBuilt, ensureInstalled, main, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('site');
  const { status } = await runFile('tests/lighthouse/run.ts', process.argv.slice(2));
  process.exitCode = typeof status === 'number' ? status : 1;
});
