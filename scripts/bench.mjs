// npm run bench: every benchmark beside its independent solver, one after another.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, main, root, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  const folder = join(root, 'tests', 'bench');
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.bench.ts'))) {
    console.log(`\n${file}`);
    const { status } = await runFile(join(folder, file));
    if (status !== 0) process.exitCode = 1;
  }
});
