// Runs a file of the project, or with --bin an installed program, on the pinned Node with the library built.
import { ensureBuilt, ensureInstalled, main, runBin, runFile } from './workspace.mjs';

await main(async () => {
  const [first, ...rest] = process.argv.slice(2);
  const quietly = () => {};
  await ensureInstalled();
  if (first === '--bin') {
    const [name, ...args] = rest;
    process.exitCode = (await runBin(name, args)).status;
    return;
  }
  await ensureBuilt('core', quietly);
  process.exitCode = (await runFile(first, rest)).status;
});
