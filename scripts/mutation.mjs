// npm run mutation -- load tempo: breaks the code of core in small ways and names what no test noticed.
import { ensureInstalled, main, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  const { status } = await runFile('tests/mutation/run.ts', process.argv.slice(2));
  process.exitCode = typeof status === 'number' ? status : 1;
});
