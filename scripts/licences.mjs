// npm run licences: writes THIRD-PARTY.md, the licences of everything that reaches users.
import { ensureInstalled, main, runFile } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  process.exitCode = (await runFile('tests/licences/write.ts')).status;
});
